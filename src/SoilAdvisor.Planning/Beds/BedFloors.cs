using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.Beds;

/// <summary>
/// Needs less credits. The low end of a need and the low end of a credit make the floor: nothing is counted on that may not come.
/// Credits stand against the first planting; what is left over is not carried to the next, which is said.
/// </summary>
internal static class BedFloors
{
    public static IReadOnlyList<PlantingFloor> Of(BedNeed need, WorkingSheet? working)
    {
        var floors = new List<PlantingFloor>();
        foreach (var group in need.Needs.Where(n => n.Nutrient.Balanced() is not null).GroupBy(n => (n.Nutrient, n.PlantingIndex)))
        {
            var rate = group.Select(n => n.Rate).Aggregate((a, b) => a + b);
            var credits = group.Key.PlantingIndex == 0 ? CreditsOf(need, group.Key.Nutrient) : default;
            working?.Section($"To supply: {group.Key.Nutrient} for {group.First().Crop}");
            var low = NeedFormulas.NeedLessCredits.Of((rate.Low, credits), working, Origin.From(group.First().Source), Origin.From(CreditSource(need, group.Key.Nutrient)));
            var high = NeedFormulas.NeedLessCredits.Of((rate.High, credits));
            floors.Add(new PlantingFloor(group.Key.Nutrient.Balanced()!.Value, group.Key.PlantingIndex, low, MassPerArea.Larger(low, high), rate.IsOneNumber));
        }

        return floors;
    }

    private static MassPerArea CreditsOf(BedNeed need, PlantNutrient nutrient) =>
        need.Credits.Where(c => c.Nutrient == nutrient).Select(c => c.Low).Aggregate(default(MassPerArea), (a, b) => a + b);

    private static Citation CreditSource(BedNeed need, PlantNutrient nutrient) =>
        need.Credits.FirstOrDefault(c => c.Nutrient == nutrient)?.Source ?? Citation.OurArithmetic;
}
