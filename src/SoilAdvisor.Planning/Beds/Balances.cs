using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.Beds;

/// <summary>Floor, ceiling and supply of each nutrient over the season, lime included.</summary>
internal static class Balances
{
    private static readonly Nutrient[] Shown =
        [Nutrient.AvailableN, Nutrient.AvailableP2O5, Nutrient.TotalP2O5, Nutrient.K2O, Nutrient.Ca, Nutrient.Mg, Nutrient.S, Nutrient.CalciumCarbonate];

    public static IReadOnlyList<NutrientBalance> Of(IReadOnlyList<PlantingFloor> floors, BedModel model, BedLime lime, IReadOnlyList<MaterialApplication> applications)
    {
        var balances = new List<NutrientBalance>();
        foreach (var nutrient in Shown)
        {
            var floor = FloorOf(floors, lime, nutrient);
            var (ceiling, reason) = CeilingOf(model, lime, nutrient);
            var supplied = lime.Supplied[nutrient] + Sum(applications, a => a.Rate * a.Offered.Analysis.Share(nutrient));
            var high = lime.Supplied[nutrient] + Sum(applications, a => a.Rate * (a.Offered.Analysis.High.TryGetValue(nutrient, out var share) ? share : a.Offered.Analysis.Share(nutrient)));
            if (floor is not null || ceiling is not null || !supplied.IsZero)
            {
                balances.Add(new NutrientBalance(nutrient, floor, ceiling, reason, supplied, high));
            }
        }

        return balances;
    }

    private static MassPerArea? FloorOf(IReadOnlyList<PlantingFloor> floors, BedLime lime, Nutrient nutrient)
    {
        if (nutrient == Nutrient.CalciumCarbonate)
        {
            return lime.Plan?.Requirement.Rate.Amount;
        }

        var of = floors.Where(f => f.Nutrient == nutrient).ToList();
        return of.Count == 0 ? null : of.Select(f => f.Low).Aggregate((a, b) => a + b);
    }

    private static (MassPerArea?, string?) CeilingOf(BedModel model, BedLime lime, Nutrient nutrient)
    {
        var rows = model.Requirements.Where(r => r.Nutrient == nutrient && r.Ceiling is not null).ToList();
        return rows.Count == 0
            ? (null, null)
            : (rows.Select(r => r.Ceiling!.Value).Aggregate((a, b) => a + b) + lime.Supplied[nutrient] + model.FromDressing[nutrient], string.Join("; ", rows.Select(r => r.CeilingReason).Distinct(StringComparer.Ordinal)));
    }

    private static MassPerArea Sum(IReadOnlyList<MaterialApplication> applications, Func<MaterialApplication, MassPerArea> of) =>
        applications.Select(of).Aggregate(default(MassPerArea), (a, b) => a + b);
}
