using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>The cautions that belong beside a plan: those of what is spread, and those of any ground where food is grown.</summary>
public static class CautionsFor
{
    private static readonly string[] AnyGround = ["lead-in-old-ground", "nutrient-losses", "local-law-first"];

    /// <summary>Cautions of one bed, each once: first those of the materials in the order they are spread, the lime among them, then those of any ground.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="applications">What the plan spreads.</param>
    /// <param name="lime">The bed's lime; null for none.</param>
    /// <param name="all">All cautions by id.</param>
    public static IReadOnlyList<Caution> Plan(Bed bed, IReadOnlyList<MaterialApplication> applications, LimePlan? lime, IReadOnlyDictionary<string, Caution> all)
    {
        Material[] spread =
        [
            .. lime?.Chosen is { } chosen ? [chosen.Offered.Material] : Array.Empty<Material>(),
            .. applications.Select(a => a.Offered.Material),
            .. bed.Applied.Select(a => a.Material),
        ];
        return
        [
            .. spread.SelectMany(m => m.Cautions).Where(c => !AnyGround.Contains(c.Id))
                .Concat(AnyGround.Where(all.ContainsKey).Select(id => all[id]))
                .DistinctBy(c => c.Id),
        ];
    }
}
