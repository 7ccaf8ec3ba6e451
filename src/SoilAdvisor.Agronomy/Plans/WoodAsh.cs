using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>Wood ash is lime and potash at once: potash limits it, and some crops rule it out.</summary>
internal static class WoodAsh
{
    private const string Potato = "potato";

    /// <summary>True for ash: among the liming materials only ash carries potash.</summary>
    public static bool Is(OfferedMaterial offered) => offered.Analysis.Share(Nutrient.K2O) > 0;

    /// <summary>Why ash is not used here; null where it may be.</summary>
    public static (string Reason, Citation Source)? RuledOut(LimeRequirement requirement, LimeGround ground)
    {
        var stop = ground.Tables.FigureOf("wood-ash", "stop-at-soil-ph");
        if (stop is { Value: { } most } && requirement.SoilPh >= most)
        {
            return (Invariant($"No ash at soil pH {most} or above."), stop.Source);
        }

        if (ground.Crops.FirstOrDefault(c => c.Id.Contains(Potato, StringComparison.Ordinal) && !c.Id.Contains("sweet", StringComparison.Ordinal)) is { } potato)
        {
            return ($"No ash before {potato.Name}: it favours scab.", stop?.Source ?? Citation.CommonPractice);
        }

        return requirement.Target.Value < TargetPhChoice.AcidLovingBelow
            ? (Invariant($"No ash for a crop that wants acid soil (target pH {requirement.Target.Value})."), stop?.Source ?? Citation.CommonPractice)
            : ground.PotashNeed is { } need && need <= default(MassPerArea)
                ? ("The soil needs no potash, and ash would bring it.", Citation.OurJudgement)
                : null;
    }

    /// <summary>Most ash: what the potash need takes where it is known, else the published dose of one year.</summary>
    public static (MassPerArea Most, string Said) Limit(OfferedMaterial ash, LimeGround ground)
    {
        // The high end of its potash keeps the ceiling even with a strong ash.
        var share = ash.Analysis.High.TryGetValue(Nutrient.K2O, out var high) ? high : ash.Analysis.Share(Nutrient.K2O);
        return ground.PotashNeed is { } need
            ? (need * (1 / share), $"Potash limits ash to {PlainNumber.Of((need * (1 / share)).PoundsPerAcre)} lb/acre: the bed needs {PlainNumber.Of(need.PoundsPerAcre)} lb/acre of K2O and the ash holds {PlainNumber.Of(share * 100)} %.")
            : (ash.LargestSingleRate, $"No potash need was computed, so ash is kept to one year's published dose, {PlainNumber.Of(ash.LargestSingleRate.PoundsPerAcre)} lb/acre ({PlainNumber.Of(ash.LargestSingleRate.PoundsPer1000SquareFeet)} lb per 1000 sq ft).");
    }
}
