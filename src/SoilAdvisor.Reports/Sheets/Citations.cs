using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>Which sources stand behind an amount of a material.</summary>
internal static class Citations
{
    // An amount is our arithmetic on the analysis of what is spread.
    public static IReadOnlyList<Citation> Of(OfferedMaterial offered) =>
    [
        .. offered.Analysis.Sources
            .Where(s => offered.Analysis.Share(s.Key) != 0)
            .OrderBy(s => s.Key)
            .SelectMany(s => s.Value)
            .Prepend(Citation.OurArithmetic)
            .Distinct(),
    ];
}
