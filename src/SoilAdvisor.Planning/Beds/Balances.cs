using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.Beds;

/// <summary>Floor, ceiling and supply of each nutrient over the season, lime included.</summary>
internal static class Balances
{
    private static readonly Nutrient[] Shown =
        [Nutrient.AvailableN, Nutrient.AvailableP2O5, Nutrient.TotalP2O5, Nutrient.K2O, Nutrient.Ca, Nutrient.Mg, Nutrient.S, Nutrient.CalciumCarbonate];

    private static readonly Nutrient[] ShownUnderCeiling = [Nutrient.Na, Nutrient.Cl, Nutrient.C];

    public static IReadOnlyList<NutrientBalance> Of(IReadOnlyList<PlantingFloor> floors, BedModel model, BedLime lime, IReadOnlyList<MaterialApplication> applications)
    {
        var balances = new List<NutrientBalance>();
        foreach (var nutrient in Shown.Concat(ShownUnderCeiling.Where(n => model.Requirements.Any(r => r.Nutrient == n))))
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
        var byPlanting = rows.Where(r => r.PlantingIndex is not null).ToList();
        List<(MassPerArea Most, string? Reason)> ceilings =
        [
            .. byPlanting.Count == 0
                ? []
                : new[] { (byPlanting.Select(r => r.Ceiling!.Value).Aggregate((a, b) => a + b), (string?)string.Join("; ", byPlanting.Select(r => r.CeilingReason).Distinct(StringComparer.Ordinal))) },
            .. rows.Where(r => r.PlantingIndex is null).Select(r => (r.Ceiling!.Value, r.CeilingReason)),
        ];
        if (ceilings.Count == 0)
        {
            return (null, null);
        }

        // Several ceilings of one nutrient: the lower one rules.
        var (most, reason) = ceilings.MinBy(c => c.Most);
        return (most + lime.Supplied[nutrient] + model.FromDressing[nutrient], reason);
    }

    private static MassPerArea Sum(IReadOnlyList<MaterialApplication> applications, Func<MaterialApplication, MassPerArea> of) =>
        applications.Select(of).Aggregate(default(MassPerArea), (a, b) => a + b);
}
