using System.Globalization;
using System.Text;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Rulers;
using SoilAdvisor.Reports.Sheets;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports;

/// <summary>
/// A plan as rows for a spreadsheet: one row a bed and material, in the order of spreading; a bed with nothing to spread has one row
/// without a material. RFC 4180: comma, double quotes, CR LF. A text that a spreadsheet would run as a formula gets an apostrophe in front.
/// </summary>
public static class CsvReport
{
    private const int Digits = 7;

    /// <summary>The column names, in order. New columns are only ever added at the end.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        "farm", "date", "guide", "bed", "state", "soil_test", "area_sq_ft", "area_m2", "area_basis", "order", "material", "material_name", "purpose", "crop",
        "weight_lb", "weight_kg", "rate_lb_per_acre", "rate_kg_per_ha", "rate_lb_per_1000_sq_ft", "volume", "volume_unit", "cost", "currency", "when", "spread_by",
        "sources", "summary", "ratings",
    ];

    /// <summary>Writes the rows. Both systems of units stand side by side, so there is no choice of units; numbers have a point and no grouping.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="bibliography">Sources by id, for their titles.</param>
    public static string Write(FarmPlan plan, IReadOnlyDictionary<string, Source> bibliography)
    {
        var csv = new StringBuilder();
        Row(csv, Columns);
        foreach (var bed in plan.Beds)
        {
            var steps = SpreadingStep.Of(bed);
            foreach (var step in steps)
            {
                Row(csv, [.. About(plan, bed), .. Amounts(bed, step, bibliography), Text(bed.Summary), Ratings(bed)]);
            }

            if (steps.Count == 0)
            {
                Row(csv, [.. About(plan, bed), .. Enumerable.Repeat("", Columns.Count - 11), Text(bed.Summary), Ratings(bed)]);
            }
        }

        return csv.ToString();
    }

    private static IEnumerable<string> About(FarmPlan plan, BedPlan bed) =>
    [
        Text(plan.Farm ?? ""), Iso(plan.Date), Text(plan.Guide.Id), Text(bed.Bed.Id), bed.State.ToString().ToLowerInvariant(), Text(bed.Bed.SoilTest.Id),
        Number(bed.Bed.Area.SquareFeet), Number(bed.Bed.Area.SquareMeters), TradeWords.Of(bed.Bed.Spread),
    ];

    private static IEnumerable<string> Amounts(BedPlan bed, SpreadingStep step, IReadOnlyDictionary<string, Source> bibliography) =>
    [
        step.Order.ToString(CultureInfo.InvariantCulture),
        Text(step.Material.Id),
        Text(step.Material.Name),
        Text(step.Purpose),
        step.PlantingIndex is { } planting && planting < bed.Bed.Plantings.Count ? Text(bed.Bed.Plantings[planting].Crop.Id) : "",
        Number(step.Weight.Pounds),
        Number(step.Weight.Kilograms),
        Number(step.Rate.PoundsPerAcre),
        Number(step.Rate.KilogramsPerHectare),
        Number(step.Rate.PoundsPer1000SquareFeet),
        step.Volume is { } volume ? Number(volume.Value) : "",
        step.Volume is { } measure ? measure.Unit : "weigh it",
        step.Cost is { } cost ? cost.Value.ToString("0.00", CultureInfo.InvariantCulture) : "",
        step.Cost is { } money ? Text(money.Currency) : "",
        Text(step.When),
        step.SpreadBy is { } day ? Iso(day) : "",
        Text(string.Join("; ", step.Sources.Distinct().Select(c => Source(c, bibliography)))),
    ];

    private static string Ratings(BedPlan bed) => Text(string.Join("; ", RatingSection.Lines(bed)
        .Select(l => $"{TradeWords.Of(l.Rating.Analyte)} {RulerWords.Result(l.Rating)}: {l.HowSure ?? l.Rating.Class.Name}")));

    private static string Source(Citation citation, IReadOnlyDictionary<string, Source> bibliography)
    {
        var title = bibliography.TryGetValue(citation.SourceId, out var source) ? source.Title : citation.SourceId;
        var place = citation.Locator is { } locator ? ", " + locator : "";
        return citation.Evidence == Evidence.FromMemory ? $"{title}{place} (from memory)" : title + place;
    }

    // A spreadsheet runs a text that starts with one of these signs, also behind blanks.
    private static string Text(string text)
    {
        var clean = SafeText.Of(text);
        return clean.TrimStart() is [('=' or '+' or '-' or '@' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20'), ..] ? "'" + clean : clean;
    }

    private static string Number(double number) => Figure.Calculator(number, Digits);

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static void Row(StringBuilder csv, IEnumerable<string> cells) => csv.AppendJoin(',', cells.Select(Quoted)).Append("\r\n");

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : cell;
}
