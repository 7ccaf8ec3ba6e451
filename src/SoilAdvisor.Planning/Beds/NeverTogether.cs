using SoilAdvisor.Agronomy.Materials;

namespace SoilAdvisor.Planning.Beds;

/// <summary>Pairs that are never spread together, as the table of materials says on either side.</summary>
internal static class NeverTogether
{
    public static bool Hold(Material a, Material b) => a.Id != b.Id && (Names(a, b) || Names(b, a));

    private static bool Names(Material a, Material b) => a.NeverWith.Contains(b.Id, StringComparer.Ordinal) || a.NeverWith.Contains(b.Category, StringComparer.Ordinal);
}
