using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>Says with what share the nitrogen of a material is counted and what stands against it: published figures differ several-fold.</summary>
public static class NitrogenFactorWords
{
    /// <summary>The share used and the others; null where the material brings no nitrogen.</summary>
    /// <param name="material">The material.</param>
    /// <param name="analysis">Its analysis.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not said.</param>
    public static NitrogenFactor? For(Material material, MaterialAnalysis analysis, NitrogenTables tables, string? region)
    {
        if (analysis.Nitrogen is not { TotalHigh.Fraction: > 0 } content)
        {
            return null;
        }

        var rows = material.Values.Where(v => v.Property == "available-nitrogen-share").ToList();
        var used = content.Organic is not null
            ? new Cited<string>($"by the test of its forms of nitrogen: {Range(analysis)} of its total nitrogen in the first season", analysis.Sources[Nutrient.AvailableN][^1])
            : rows.Count > 0
                ? new Cited<string>($"{Printed(rows[0])} of its total nitrogen in the first season; the low end is counted", rows[0].Source)
                : new Cited<string>("no first-season share is held: none is counted", material.Source);
        return new NitrogenFactor(material.Id, material.Name, used, [.. Beside(material, rows, content, tables, region).DistinctBy(b => (b.Value, b.Source.SourceId))]);
    }

    private static IEnumerable<Cited<string>> Beside(Material material, List<MaterialValue> rows, NitrogenContent content, NitrogenTables tables, string? region)
    {
        var own = tables.ClassOf(material.Id);
        foreach (var row in content.Organic is null ? rows.Skip(1) : rows)
        {
            yield return new Cited<string>($"{Printed(row)}{(row.Note is { } note ? $" ({note.TrimEnd('.')})" : " of total nitrogen")}", row.Source);
        }

        foreach (var release in NitrogenFactorChoice.InOrder(tables, material.Id, null, region))
        {
            yield return new Cited<string>(Invariant($"{release.InYear(1)!.Value.Percent:0.#} % of organic nitrogen in the first year ({release.Series}, {release.MaterialClass})"), release.Source);
        }

        foreach (var share in tables.SeasonShares.Where(s => s.SeasonClass == own?.SeasonClass && rows.TrueForAll(r => r.Source.SourceId != s.Source.SourceId)))
        {
            var days = share.Days is { } period ? Invariant($", {period} days at {share.Temperature:0.#} °C") : "";
            yield return new Cited<string>(
                $"{(share.Low is { } low ? PlainNumber.Range((double)low, (double)share.High) : Invariant($"up to {share.High}"))} % of {(share.OfOrganic ? "organic" : "total")} nitrogen{days}{(share.Conditions is { } when ? $" ({when})" : "")}",
                share.Source);
        }

        if (ByRatio(material, tables) is { } predicted)
        {
            yield return predicted;
        }
    }

    private static Cited<string>? ByRatio(Material material, NitrogenTables tables)
    {
        if (material.Category == "liquid" || (material.ValueOf("carbon-to-nitrogen") is { } row ? row.Value ?? row.High : null) is not { } ratio)
        {
            return null;
        }

        return PredictedFor(ratio, tables) is { High: { } high } rule
            ? new Cited<string>(
                $"by its carbon to nitrogen ratio of {PlainNumber.Of(ratio)} alone: {(rule.Low is { } low ? PlainNumber.Range(low.Percent, high.Percent) : "nothing, or below zero,")} {(rule.Low is null ? "" : "% ")}of total nitrogen (our class)",
                rule.Source)
            : null;
    }

    /// <summary>Our class for a carbon to nitrogen ratio; null where no class is held.</summary>
    /// <param name="ratio">The ratio.</param>
    /// <param name="tables">The tables.</param>
    public static CarbonRatioRule? PredictedFor(decimal ratio, NitrogenTables tables) =>
        tables.CarbonRatios.FirstOrDefault(r => r.Use == CarbonRatioUse.PredictedShare && !(ratio < r.From) && !(ratio >= r.Below));

    private static string Printed(MaterialValue row) => $"{PlainNumber.Range((double)(row.Low ?? row.Value ?? 0), (double)(row.High ?? row.Value ?? 0))} %";

    private static string Range(MaterialAnalysis analysis)
    {
        var total = analysis.Nitrogen!.TotalLow.Fraction;
        return $"{PlainNumber.Range(analysis.Share(Nutrient.AvailableN) / total * 100, analysis.High[Nutrient.AvailableN] / total * 100)} %";
    }
}
