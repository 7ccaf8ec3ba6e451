using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>What the harvests of one season take away, with the yields and figures that the need calculation uses.</summary>
public static class SeasonRemovals
{
    /// <summary>Phosphate in the harvests.</summary>
    /// <param name="plantings">The crops of the season.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The removal with what was assumed, or a refusal that names the crop: yield-needed, removal-not-held.</returns>
    public static Answer<(Rate<TotalP2O5> Removed, IReadOnlyList<Assumption> Assumptions)> OfPhosphate(IReadOnlyList<Planting> plantings, WorkingSheet? working = null) =>
        Of(plantings, PlantNutrient.P2O5, working).Select(r => (new Rate<TotalP2O5>(r.Removed), r.Assumptions));

    /// <summary>Potash in the harvests.</summary>
    /// <param name="plantings">The crops of the season.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The removal with what was assumed, or a refusal that names the crop: yield-needed, removal-not-held.</returns>
    public static Answer<(Rate<K2O> Removed, IReadOnlyList<Assumption> Assumptions)> OfPotash(IReadOnlyList<Planting> plantings, WorkingSheet? working = null) =>
        Of(plantings, PlantNutrient.K2O, working).Select(r => (new Rate<K2O>(r.Removed), r.Assumptions));

    private static Answer<(MassPerArea Removed, IReadOnlyList<Assumption> Assumptions)> Of(IReadOnlyList<Planting> plantings, PlantNutrient nutrient, WorkingSheet? working)
    {
        var assumed = new List<Assumption>();
        return HarvestRemoval.OfSeason(plantings, nutrient, assumed, working).Select(removed => (removed, (IReadOnlyList<Assumption>)assumed));
    }
}
