using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.MaterialChoice;
using SoilAdvisor.Planning.Tests.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.Beds;

public class MaterialPlanTests
{
    [Theory]
    [InlineData("potash", "nitrogen")]
    [InlineData("nitrogen", "potash")]
    public void Two_materials_that_must_not_meet_are_never_spread_together(string says, string of)
    {
        // Each is the cheapest for its need, at 0.10 a pound. Replacing the potash costs 0.20 more a pound, replacing the nitrogen 0.80.
        var plan = MaterialPlan.Best(Model(
            Forbid(Offer.Of("nitrogen", 0.1, 2000, (Nutrient.AvailableN, 0.1)), says == "nitrogen" ? of : null),
            Forbid(Offer.Of("potash", 0.1, 2000, (Nutrient.K2O, 0.1)), says == "potash" ? of : null),
            Offer.Of("other-nitrogen", 0.9, 2000, (Nutrient.AvailableN, 0.1)),
            Offer.Of("other-potash", 0.3, 2000, (Nutrient.K2O, 0.1))));
        Assert.Equal(["nitrogen", "other-potash"], Used(plan));
        Assert.True(plan.Solution.MeetsAll);
    }

    [Fact]
    public void Where_only_one_of_a_forbidden_pair_can_be_spread_the_smaller_gap_is_left()
    {
        // Without a substitute one need must be missed whole; the cheaper plan of the two decides.
        var plan = MaterialPlan.Best(Model(
            Forbid(Offer.Of("nitrogen", 0.5, 2000, (Nutrient.AvailableN, 0.1)), "plant-meal"),
            Offer.Of("potash", 0.1, 2000, (Nutrient.K2O, 0.1))));
        Assert.Equal(["potash"], Used(plan));
        Assert.Equal([50.0, 0.0], plan.Solution.Missed.Select(m => m.PoundsPerAcre));
    }

    [Fact]
    public void A_material_never_forbids_itself()
    {
        var meal = Forbid(Offer.Of("meal", 0.1, 2000, (Nutrient.AvailableN, 0.1)), "plant-meal");
        Assert.False(NeverTogether.Hold(meal.Material, meal.Material));
    }

    [Fact]
    public void Plantings_of_one_day_share_the_largest_single_rate()
    {
        var meal = Offer.Of("meal", 0.1, 1000, (Nutrient.AvailableN, 0.1));
        MaterialModel Two(params SharedLimit[] limits) => new(
            [new MaterialVariable(meal, 0, meal.LargestSingleRate), new MaterialVariable(meal, 1, meal.LargestSingleRate)],
            [new Requirement(Nutrient.AvailableN, 0, Models.Pounds(80), null, null), new Requirement(Nutrient.AvailableN, 1, Models.Pounds(80), null, null)],
            [],
            limits,
            Priced: true);
        Assert.True(MaterialSolver.Solve(Two()).MeetsAll);

        // 1000 lb in all give 100 lb N for the two crops that ask for 160.
        var solution = MaterialSolver.Solve(Two(new SharedLimit("meal", [0, 1], meal.LargestSingleRate)));
        Assert.Equal(60, solution.Missed.Sum(m => m.PoundsPerAcre), 1e-3);
        Assert.InRange(solution.Amounts.Sum(a => a.PoundsPerAcre), 999.9, 1000 * (1 + 1e-9));
    }

    private static OfferedMaterial Forbid(OfferedMaterial offered, string? other) =>
        other is null ? offered : offered with { Material = offered.Material with { NeverWith = [other] } };

    private static MaterialModel Model(params OfferedMaterial[] offered) => new(
        [.. offered.Select(o => new MaterialVariable(o, 0, o.LargestSingleRate))],
        [new Requirement(Nutrient.AvailableN, 0, Models.Pounds(50), null, null), new Requirement(Nutrient.K2O, 0, Models.Pounds(50), null, null)],
        [],
        [],
        Priced: true);

    private static IEnumerable<string> Used(MaterialPlan plan) =>
        plan.Model.Variables.Where((_, i) => !plan.Solution.Amounts[i].IsZero).Select(v => v.Offered.Material.Id);
}
