using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Biomass;

/// <summary>Dry matter of a stand from its cuts: the dry weight of all of them over the area of all of them.</summary>
public static class CutStand
{
    /// <summary>Dry matter of the stand.</summary>
    /// <param name="samples">The cuts; at least one.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    public static MassPerArea DryMatter(IReadOnlyList<CutSample> samples, WorkingSheet? working = null)
    {
        ArgumentOutOfRangeException.ThrowIfZero(samples.Count);
        var dried = Mass.Zero;
        var ground = Area.Zero;
        foreach (var sample in samples)
        {
            dried += sample.DryMatter is { } share
                ? BiomassFormulas.DryOfFresh.Of((sample.Weighed, share), working, Origin.Given("fresh weight of a cut"), Origin.Given("dry matter of a cut"))
                : sample.Weighed;
            ground += sample.Frame;
        }

        var all = FormattableString.Invariant($"{samples.Count} {(samples.Count == 1 ? "cut" : "cuts together")}");
        return CoverCropFormulas.QuadratDryMatter.Of((dried, ground), working, Origin.Given(all), Origin.Given(all));
    }
}
