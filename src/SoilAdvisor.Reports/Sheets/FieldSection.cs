using System.Globalization;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>How the plan is carried out: the order of the work, what to measure out, what to mix, a strip to try, one check.</summary>
internal static class FieldSection
{
    // So many rows fit on a sheet of paper with room to tick them off.
    private const int RowsOnASheet = 24;

    // A third rate of one material is in proportion to the first two.
    private const int RatesShown = 2;

    public static string Anchor(int sheet) => string.Create(CultureInfo.InvariantCulture, $"field-sheet-{sheet + 1}");

    public static IEnumerable<Block> Of(FarmPlan plan, Measures measures) =>
        plan.FieldWork is { } work ? [.. Check(work), .. Mixes(work, measures), .. Strips(work, measures), .. Sheets(work, measures)] : [];

    private static IEnumerable<Block> Check(FieldWorkPlan work)
    {
        if (work.Check is not { } check)
        {
            yield break;
        }

        yield return new Heading(3, "One check worth making");
        var when = (check.Kind, check.From) switch
        {
            (_, null) => "",
            (ProposedCheckKind.Resampling, { } due) => $" From {Measures.Day(due)}.",
            (ProposedCheckKind.NitrateTest, { } planted) => $" It is planted on {Measures.Day(planted)}.",
            (_, { } start) => $" From {Measures.Day(start)}{(check.To is { } end ? $" to {Measures.Day(end)}" : "")}.",
        };
        yield return new Paragraph(new Sentence(TradeWords.Sentence(check.What) + when, check.Source), new Sentence(TradeWords.Sentence(check.Why), Citation.OurJudgement));
    }

    private static IEnumerable<Block> Mixes(FieldWorkPlan work, Measures measures)
    {
        if (work.Mixes.Count == 0 && work.NotMixed.Count == 0)
        {
            yield break;
        }

        yield return new Heading(3, "Mixing sheet");
        yield return new Paragraph(
        [
            new Sentence(work.Mixes.Count > 0 ? "Mix these or spread them one by one, never both. Turn the heap three times, dry, and spread it the same day." : "Nothing is mixed.", Citation.CommonPractice),
            .. work.NotMixed.Select(n => new Sentence(TradeWords.Sentence(n), Citation.OurJudgement)),
        ]);
        if (work.Mixes.Count > 0)
        {
            yield return new Fold("Batches", 4, [new SourcedTable(
                ["Beds", "Into the batch", "Weight of the batch", "Each bed gets", "By"],
                [.. work.Mixes.Select(m => new SourcedRow(
                    [
                        string.Join(", ", m.Portions.Select(p => p.Bed)),
                        Cell.Of([.. m.Parts.Select(p => $"{measures.Weight(p.Weight)} {p.Material.Name}")]),
                        measures.Weight(m.Weight),
                        Cell.Of([.. m.Portions.Select(p => $"{p.Bed}: {measures.Weight(p.Weight)}")]),
                        m.By is { } day ? Measures.Day(day) : "no date known",
                    ],
                    [Citation.OurArithmetic]))])]);
        }
    }

    private static IEnumerable<Block> Strips(FieldWorkPlan work, Measures measures)
    {
        var (strip, swath) = (measures.Across(work.Measures.StripLength), measures.Across(work.Measures.SwathWidth));
        yield return new Heading(3, "Set the spreader, or your hand, on a strip");
        yield return new Paragraph(
            new Sentence($"Lay out {strip} and spread one swath of {swath} over a sheet. Sweep it up and weigh it.", Citation.CommonPractice),
            new Sentence($"Rate put down = weight caught × {measures.PerUnitCaught(work.Strips[0].PerPound)}.", Citation.UnitDefinitions),
            new Sentence("Then multiply the flow by the rate wanted over the rate put down, or divide your pace by it, and try again until it is within a tenth.", Citation.OurArithmetic));
        yield return new Fold("What the strip should get", 4, [new SourcedTable(
            ["Material", "Rate wanted", "On the strip", "Beds"],
            [.. work.Strips.GroupBy(s => s.Material.Id, StringComparer.Ordinal).SelectMany(g => g.Take(RatesShown)).Select(s => new SourcedRow(
                [s.Material.Name, measures.Rate(s.Rate), measures.Weight(s.Target), string.Join(", ", s.Beds)], [Citation.OurArithmetic]))],
            KeyColumn: 2),
            .. work.Working.Count > 0 ? [new Fold("Working", 5, [.. work.Working.Select(l => new WorkingBlock(l))])] : Array.Empty<Block>()]);
    }

    private static IEnumerable<Block> Sheets(FieldWorkPlan work, Measures measures)
    {
        yield return new Heading(3, "Field sheets: the order of the work");
        yield return new Paragraph(
            new Sentence("Work down the list and tick each line.", Citation.CommonPractice),
            new Sentence("Amounts are rounded to what you can measure, never over a limit; the last column says what that changes.", Citation.OurArithmetic),
            new Sentence($"A bucket holds {measures.Held(work.Measures.Bucket)}{(work.Measures.Scoop is { } scoop ? $", a scoop {measures.Held(scoop)}" : "")}, filled level.", Citation.OurJudgement));
        var rows = work.Passes.SelectMany(p => p.Beds.Select((b, i) => (Pass: p, Bed: b, First: i == 0))).ToList();
        // Rules are said once a material and sheet, a day once in its lines.
        foreach (var (sheet, number) in rows.Chunk(RowsOnASheet).Select((s, i) => (s, i)))
        {
            yield return new Heading(4, string.Create(CultureInfo.InvariantCulture, $"Sheet {number + 1} of {(rows.Count + RowsOnASheet - 1) / RowsOnASheet}"), Anchor(number));
            yield return new SourcedTable(
                ["Done", "By", "Material", "Bed", "Measure out", "Weight", "Rounding"],
                [.. sheet.Select((r, i) => Row(
                    r.Pass,
                    r.Bed,
                    i == 0 || (r.First && (r.Pass.By != sheet[i - 1].Pass.By || r.Pass.Dose is not null)),
                    r.First && !sheet.Take(i).Any(s => s.Pass.Material.Id == r.Pass.Material.Id && s.Pass.Rules.SequenceEqual(r.Pass.Rules)),
                    measures))],
                KeyColumn: 4);
        }

        if (work.Measures.Assumptions.Count > 0)
        {
            yield return FarmPaper.Said(work.Measures.Assumptions);
        }
    }

    private static SourcedRow Row(FieldPass pass, MeasuredSpread bed, bool newDay, bool withRules, Measures measures) => new(
        [
            "☐",
            newDay ? pass.By is { } day ? Measures.Day(day) : pass.Dose ?? "no date known" : "″",
            Cell.Of([pass.Material.Name, .. pass.Dose is { } dose && pass.By is not null ? [dose] : Array.Empty<string>(), .. withRules ? pass.Rules : []]),
            bed.Bed,
            measures.MeasuredOut(bed.Amount),
            measures.Weight(bed.Amount.Measured),
            Cell.Of([measures.Rounding(bed), .. bed.HeldBy is { } limit ? [$"held down by {limit}"] : Array.Empty<string>()]),
        ],
        [bed.Amount.Density?.Source ?? Citation.OurArithmetic, .. pass.Rules.Count > 0 && withRules ? new[] { Citation.CommonPractice } : []]);
}
