using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>When a crop takes nitrogen up, as far as a publication says.</summary>
public static class UptakeWords
{
    /// <summary>Days after planting in which a crop takes little up: its own figure, else that of vegetables in general.</summary>
    /// <param name="crop">Id of the crop.</param>
    /// <param name="tables">The tables.</param>
    public static UptakeFact? SlowStart(string crop, NitrogenTables tables) => Of(crop, UptakeKind.SlowStart, tables).FirstOrDefault();

    /// <summary>The sentence for a crop. Where no curve is published that is said, and the guide's split is used.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="planted">Day of planting; null when not known.</param>
    /// <param name="tables">The tables.</param>
    public static Cited<string> For(Crop crop, DateOnly? planted, NitrogenTables tables)
    {
        var slow = SlowStart(crop.Id, tables);
        var lines = Of(crop.Id, UptakeKind.Line, tables);
        var end = Of(crop.Id, UptakeKind.LastDays, tables).FirstOrDefault();
        var sentences = new List<string>();
        if (slow?.Days is { } days)
        {
            sentences.Add($"Little nitrogen is taken up in the first {days} days or so after planting{(planted is { } day ? $", up to about {PlainNumber.Date(day.AddDays(days))}" : "")}; then uptake is fast.");
        }

        if (end is not null)
        {
            sentences.Add(Invariant($"{end.Low} to {end.High} % of it falls in the last {end.Days} days before harvest."));
        }

        sentences.Add(lines.Count > 0
            ? $"By the published lines the crop holds {Held(lines, 45)} lb/acre 45 days and {Held(lines, 60)} lb/acre 60 days after planting ({string.Join("; ", lines.Select(l => l.Conditions))})."
            : $"No uptake curve of {crop.Name} is held; the guide's split says when nitrogen is wanted.");
        return new Cited<string>(string.Join(" ", sentences), (lines.FirstOrDefault() ?? end ?? slow)?.Source ?? Citation.OurJudgement);
    }

    private static IReadOnlyList<UptakeFact> Of(string crop, UptakeKind kind, NitrogenTables tables)
    {
        var rows = tables.Uptake.Where(u => u.Kind == kind).ToList();
        var own = rows.FindAll(u => u.Crop == crop);
        return own.Count > 0 ? own : rows.FindAll(u => u.Crop is null);
    }

    private static string Held(IReadOnlyList<UptakeFact> lines, int days)
    {
        var held = lines.Select(l => Math.Max(0, (double)(((l.Low ?? 0) * days) + (l.Intercept ?? 0)))).ToList();
        return PlainNumber.Range(held.Min(), held.Max());
    }
}
