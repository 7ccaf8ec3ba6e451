using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>Nitrogen that a material rich in carbon takes from the soil while it decays.</summary>
public static class TieUp
{
    /// <summary>
    /// The nitrogen tied up by a rate of a material that is worked in, as a range below zero; null where its ratio is not known or it
    /// releases nitrogen. Between the two published thresholds the range ends at nothing; above both it lies below zero throughout.
    /// </summary>
    /// <param name="material">The material.</param>
    /// <param name="analysis">Its analysis.</param>
    /// <param name="rate">Its rate.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="working">Receives the working; null for none.</param>
    public static RateRange? Of(Material material, MaterialAnalysis analysis, MassPerArea rate, NitrogenTables tables, WorkingSheet? working = null)
    {
        var row = material.ValueOf("carbon-to-nitrogen");
        if ((analysis.CarbonToNitrogen ?? row?.High ?? row?.Value ?? row?.Low) is not { } most || analysis.Nitrogen is not { } content)
        {
            return null;
        }

        var release = tables.CarbonRatios.First(r => r.Use == CarbonRatioUse.NetRelease);
        var tie = tables.CarbonRatios.First(r => r.Use == CarbonRatioUse.TieUp);
        if (most <= release.Below)
        {
            return null;
        }

        var least = analysis.CarbonToNitrogen ?? row?.Low ?? row?.Value ?? most;
        var from = analysis.CarbonToNitrogen is null ? row!.Source : Citation.OurArithmetic;
        var large = Amount(content.TotalHigh.In(rate), most, release.Below!.Value, from, release.Source, working);
        var small = least > tie.From ? Amount(content.TotalLow.In(rate), least, tie.From!.Value, from, tie.Source, working) : default;
        return new RateRange(default(MassPerArea) - large, default(MassPerArea) - small);
    }

    private static MassPerArea Amount(MassPerArea nitrogen, decimal ratio, decimal threshold, Citation ratioSource, Citation thresholdSource, WorkingSheet? working) =>
        NitrogenFormulas.TiedUp.Of(
            (new Rate<TotalN>(nitrogen), new Coefficient((double)ratio), new Coefficient((double)threshold)),
            working,
            Origin.From(Citation.OurArithmetic),
            Origin.From(ratioSource),
            Origin.From(thresholdSource)).Amount;
}
