using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>
/// Chooses whose factors are used: those of the farm's own region where a guide has some, else the first publication that has the class,
/// which is said. A row from memory is never chosen.
/// </summary>
public static class NitrogenFactorChoice
{
    /// <summary>Last day of working in that the printed table names; later counts as left on the surface.</summary>
    public const int LastPrintedDay = 5;

    private static readonly IReadOnlyList<string> RawManure = ["cattle", "swine", "sheep", "horse", "poultry", "manure"];

    /// <summary>The factors for a material whose forms of nitrogen were tested.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="material">Id of the material.</param>
    /// <param name="dryMatter">Dry matter, %; null when not known.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not said.</param>
    /// <param name="how">How it reaches the soil.</param>
    /// <param name="daysToWorkingIn">Days from spreading to working in; read only where it is worked in.</param>
    /// <returns>The factors, or a refusal no-organic-release when no publication has the material's class.</returns>
    public static Answer<NitrogenFactors> For(NitrogenTables tables, string material, decimal? dryMatter, string? region, SpreadingWay how, int daysToWorkingIn)
    {
        if (Release(tables, material, dryMatter, region) is not { } release)
        {
            return Answer<NitrogenFactors>.Refused(
                "no-organic-release",
                $"No publication that is held says how much organic nitrogen of {material} comes in a year, so ammonium and nitrate of its test are not used.",
                "Nothing to do: its total nitrogen is counted with the share of its class.");
        }

        var cells = Kept(tables, region, how, daysToWorkingIn);
        return Answer<NitrogenFactors>.Given(new NitrogenFactors(
            release.Used,
            cells.MinBy(c => c.Kept)!.Kept,
            cells.MaxBy(c => c.Kept)!.Kept,
            cells[0].Source,
            [.. release.Assumptions, new Assumption("ammonium-kept", Words(cells, how, daysToWorkingIn), cells[0].Source)]));
    }

    /// <summary>The rows of organic release that a material can be read by, the one used first; empty when there is none.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="material">Id of the material.</param>
    /// <param name="dryMatter">Dry matter, %; null when not known.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not said.</param>
    public static IReadOnlyList<OrganicRelease> InOrder(NitrogenTables tables, string material, decimal? dryMatter, string? region)
    {
        if (tables.ClassOf(material)?.ManureClass is not { } asked)
        {
            return [];
        }

        List<string> classes = RawManure.Contains(asked) ? [asked, "manure", "manure-with-bedding"] : [asked];
        return
        [
            .. tables.Releases
                .Where(r => r.InYear(1) is not null && classes.Contains(r.MaterialClass) && (dryMatter is not { } matter || r.Fits(matter)))
                .OrderBy(r => r.Source.Evidence == Evidence.FromMemory)
                .ThenBy(r => !(region is not null && r.Regions.Contains(region)))
                .ThenBy(r => r.Regions.Count == 0)
                .GroupBy(r => r.Series)
                // A guide's own class goes before its class for any animal; of two by dry matter the lesser, where dry matter is not known.
                .Select(g => g.OrderBy(r => classes.IndexOf(r.MaterialClass)).ThenBy(r => r.InYear(1)!.Value).First()),
        ];
    }

    /// <summary>The printed cells that hold for a way of spreading, over all weather.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not said.</param>
    /// <param name="how">How it reaches the soil.</param>
    /// <param name="daysToWorkingIn">Days from spreading to working in; 0 is the same day.</param>
    public static IReadOnlyList<AmmoniumKept> Kept(NitrogenTables tables, string? region, SpreadingWay how, int daysToWorkingIn)
    {
        var (way, days) = how == SpreadingWay.Incorporated
            ? daysToWorkingIn > LastPrintedDay ? (SpreadingWay.NotIncorporated, (int?)null) : (how, Math.Max(1, daysToWorkingIn))
            : (how, null);
        var fitting = tables.Ammonium.Where(a => a.Source.Evidence == Evidence.Seen && a.How == way && a.WithinDays == days).ToList();
        var own = tables.Releases.Where(r => region is not null && r.Regions.Contains(region)).Select(r => r.Series).ToHashSet(StringComparer.Ordinal);
        var first = fitting.Find(a => own.Contains(a.Retention))?.Retention ?? fitting[0].Retention;
        return [.. fitting.Where(a => a.Retention == first)];
    }

    private static (OrganicRelease Used, IReadOnlyList<Assumption> Assumptions)? Release(NitrogenTables tables, string material, decimal? dryMatter, string? region)
    {
        var all = InOrder(tables, material, dryMatter, region);
        if (all.Count == 0 || all[0].Source.Evidence == Evidence.FromMemory)
        {
            return null;
        }

        var used = all[0];
        var isOwn = region is not null && used.Regions.Contains(region);
        var beside = string.Join(", ", all.Skip(1).Select(r => Invariant($"{r.Series} {r.InYear(1)!.Value.Percent:0.#} %")));
        var assumptions = new List<Assumption>
        {
            new(
                isOwn ? "release-of-region" : "release-of-another-region",
                Invariant($"{used.InYear(1)!.Value.Percent:0.#} % of the organic nitrogen of {material} is counted in the first year, by the series {used.Series}{(isOwn ? ", made for your region" : "; no series of your region is held")}{(beside.Length > 0 ? $". Others print: {beside}" : "")}."),
                used.Source),
        };
        if (dryMatter is null && (used.DryMatterFrom ?? used.DryMatterBelow) is not null)
        {
            assumptions.Add(new Assumption("dry-matter-unknown", $"The dry matter of {material} is not known, and the series depends on it: the lower share is taken. Give its moisture.", used.Source));
        }

        return (used, assumptions);
    }

    private static string Words(IReadOnlyList<AmmoniumKept> cells, SpreadingWay how, int days)
    {
        var range = PlainNumber.Range(cells.Min(c => c.Kept.Percent), cells.Max(c => c.Kept.Percent));
        var way = how switch
        {
            SpreadingWay.Injected => "injected",
            SpreadingWay.OntoResidue => "left on residue",
            SpreadingWay.Incorporated when days <= LastPrintedDay => Invariant($"worked in within {Math.Max(1, days)} {(days <= 1 ? "day" : "days")}"),
            SpreadingWay.Incorporated => Invariant($"worked in after more than {LastPrintedDay} days, which counts as left on the surface"),
            _ => "not worked in",
        };
        return $"Of the ammonium nitrogen {range} % is kept ({way}; {cells[0].Retention} table{(cells.Count > 1 ? ", over all weather: least when it is warm and dry" : "")}). The low end is counted.";
    }
}
