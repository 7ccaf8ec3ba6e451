using System.Globalization;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.MaterialChoice;
using UnitsNet;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>
/// The choice of materials for all beds of a farm. Where nothing ties the beds together, the best of each is the best of all; a shelf,
/// whole packs, deliveries, passes, a budget or a number of products do tie them.
/// </summary>
/// <param name="Plans">What is spread, bed by bed.</param>
/// <param name="DifferentNeeds">Groups of beds with the same need.</param>
/// <param name="Gap">Share that is not proven.</param>
/// <param name="Ended">How the search ended, in words.</param>
internal sealed record FarmMaterials(IReadOnlyList<MaterialPlan> Plans, int DifferentNeeds, double Gap, string Ended)
{
    public static FarmMaterials For(IReadOnlyList<PreparedBed> beds, FarmLimits limits, bool priced, CancellationToken cancel)
    {
        var groups = NeedGroups.Of([.. beds.Select(b => (b.Model, b.Bed.Area))]);
        var model = new FarmModel(groups, Products(beds), limits, priced);
        if (!model.TiesBedsTogether)
        {
            return new FarmMaterials(Spread(beds.Count, groups, g => groups[g].Alone), groups.Count, 0, "Nothing ties the beds together: the best plan of each bed is the best of the farm, and is proven.");
        }

        cancel.ThrowIfCancellationRequested();
        var solution = FarmSearch.Solve(model, FarmSearch.WantedGap, cancel);
        return new FarmMaterials(
            Spread(beds.Count, groups, g => new MaterialPlan(groups[g].Model, MaterialSolver.Tidy(groups[g].Model, solution.Rates[g]))),
            groups.Count,
            solution.Gap,
            Words(solution, limits));
    }

    private static List<FarmProduct> Products(IReadOnlyList<PreparedBed> beds)
    {
        var taken = beds.SelectMany(Taken)
            .GroupBy(t => t.Offered.Material.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Sum(t => t.PerBed.Pounds), StringComparer.Ordinal);
        return
        [
            .. beds.SelectMany(b => b.Model.Variables).Select(v => v.Offered).DistinctBy(o => o.Material.Id)
                .Select(o => FarmProduct.Of(o, taken.GetValueOrDefault(o.Material.Id))),
        ];
    }

    // Lime and compost for structure are fixed before the choice and come off the same shelf.
    private static IEnumerable<(OfferedMaterial Offered, Mass PerBed)> Taken(PreparedBed bed) =>
    [
        .. bed.Lime.Plan?.Chosen is { } lime ? [(lime.Offered, lime.PerBed ?? lime.Rate.On(bed.Bed.Area))] : Array.Empty<(OfferedMaterial, Mass)>(),
        .. bed.Dressing is { IsGiven: true, Value: var dressing } ? [(dressing.Offered, dressing.Rate.On(bed.Bed.Area))] : Array.Empty<(OfferedMaterial, Mass)>(),
    ];

    private static IReadOnlyList<MaterialPlan> Spread(int beds, IReadOnlyList<NeedGroup> groups, Func<int, MaterialPlan> of)
    {
        var plans = new MaterialPlan[beds];
        for (var g = 0; g < groups.Count; g++)
        {
            var plan = of(g);
            foreach (var bed in groups[g].Beds)
            {
                plans[bed] = plan;
            }
        }

        return plans;
    }

    private static string Words(FarmSolution solution, FarmLimits limits)
    {
        var gap = solution.Gap.ToString(solution.Gap < 0.0995 ? "0.0 %" : "0 %", CultureInfo.InvariantCulture);
        return solution.Ended switch
        {
            SearchEnd.Proven when solution.Gap <= 1e-6 => "Proven: no plan within your limits is better.",
            SearchEnd.Proven => $"No plan within your limits is better by more than {gap}: proven. The search stops there.",
            SearchEnd.Branches => $"The search stopped after its full number of trials. A better plan, if there is one, is better by at most {gap}: proven.",
            _ => string.Create(CultureInfo.InvariantCulture, $"The search stopped after {limits.Seconds} seconds. A better plan, if there is one, is better by at most {gap}: proven. Give it more seconds to narrow that."),
        };
    }
}
