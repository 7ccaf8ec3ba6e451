using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Units in which lime rates are printed. A ton is a short ton of 2000 lb; t is 1000 kg.</summary>
public static class LimeRateUnits
{
    private const double PoundsInShortTon = 2000;

    private static readonly (string Id, string[] Synonyms, MassPerArea One)[] Known =
    [
        ("lb/acre", ["lbs/acre", "lb/ac", "lbs/ac"], MassPerArea.FromPoundsPerAcre(1)),
        ("ton/acre", ["tons/acre", "short-ton/acre", "ton/ac", "tons/ac"], MassPerArea.FromPoundsPerAcre(PoundsInShortTon)),
        ("lb/1000-sq-ft", ["lb/1000 sq ft", "lb/1000 sq. ft."], MassPerArea.FromPoundsPer1000SquareFeet(1)),
        ("kg/ha", [], MassPerArea.FromKilogramsPerHectare(1)),
        ("t/ha", [], MassPerArea.FromKilogramsPerHectare(1000)),
    ];

    /// <summary>Their ids.</summary>
    public static IReadOnlyList<string> Ids { get; } = [.. Known.Select(k => k.Id)];

    /// <summary>One of the unit as mass per area; null for a unit that is not known.</summary>
    /// <param name="text">Id or synonym, in any case.</param>
    public static MassPerArea? One(string text) => Known
        .Where(k => k.Synonyms.Prepend(k.Id).Contains(text.Trim(), StringComparer.OrdinalIgnoreCase))
        .Select(k => (MassPerArea?)k.One)
        .FirstOrDefault();
}
