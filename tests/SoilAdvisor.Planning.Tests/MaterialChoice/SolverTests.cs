using CsCheck;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.MaterialChoice;

public class SolverTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_plan_exceeds_a_ceiling_or_a_largest_single_rate(bool priced) =>
        Models.Any(12, priced).Sample(
            model =>
            {
                var pounds = Burden.PoundsOf(MaterialSolver.Solve(model));
                foreach (var requirement in model.Requirements)
                {
                    if (requirement.Ceiling is { } ceiling)
                    {
                        Assert.InRange(Burden.Supply(model, requirement.Nutrient, requirement.PlantingIndex, pounds), 0, ceiling.PoundsPerAcre * (1 + 1e-9));
                    }
                }

                Assert.All(pounds.Zip(model.Variables), p => Assert.InRange(p.First, 0, p.Second.Most.PoundsPerAcre));
            },
            iter: 300,
            threads: 1);

    [Fact]
    public void What_is_missed_is_the_floor_less_the_supply() =>
        Models.Any(6, priced: true).Sample(
            model =>
            {
                var solution = MaterialSolver.Solve(model);
                var pounds = Burden.PoundsOf(solution);
                for (var r = 0; r < model.Requirements.Count; r++)
                {
                    var (requirement, missed) = (model.Requirements[r], solution.Missed[r].PoundsPerAcre);
                    var gap = Math.Max(0, (requirement.Floor ?? default).PoundsPerAcre - Burden.Supply(model, requirement.Nutrient, requirement.PlantingIndex, pounds));
                    Assert.InRange(missed, gap - 1e-3, gap + 1e-9);
                }
            },
            iter: 200,
            threads: 1);

    [Fact]
    public void The_order_in_which_materials_are_offered_changes_no_burden() =>
        Models.Any(8, priced: true).Sample(
            model =>
            {
                var turned = model with { Variables = [.. model.Variables.Reverse()] };
                var (a, b) = (MaterialSolver.Solve(model), MaterialSolver.Solve(turned));
                Assert.Equal(a.MeetsAll, b.MeetsAll);
                if (a.MeetsAll)
                {
                    Assert.Equal(Burden.Money(model, Burden.PoundsOf(a)), Burden.Money(turned, Burden.PoundsOf(b)), 0.01);
                }
            },
            iter: 100,
            threads: 1);

    [Fact]
    public void The_same_model_gives_the_same_bits() =>
        Models.Any(8, priced: false).Sample(
            model => Assert.Equal(MaterialSolver.Solve(model).Amounts, MaterialSolver.Solve(model).Amounts),
            iter: 50,
            threads: 1);

    [Fact]
    public void Of_two_meals_with_the_same_nitrogen_the_cheaper_is_taken()
    {
        // 60 lb N / 0.06 = 1000 lb of either; the dear one costs 1.00 a pound, the cheap one 0.50.
        var model = Nitrogen(60, [Offer.Of("dear", 1.0, 2000, (Nutrient.AvailableN, 0.06)), Offer.Of("cheap", 0.5, 2000, (Nutrient.AvailableN, 0.06))], priced: true);
        var pounds = Burden.PoundsOf(MaterialSolver.Solve(model));
        Assert.Equal(0, pounds[0]);
        Assert.Equal(1000, pounds[1], 1e-3);
    }

    [Fact]
    public void Without_prices_least_excess_goes_before_least_mass()
    {
        // Both give 60 lb N. The strong meal weighs half as much and brings 30 lb of sulfur that nobody asked for.
        var model = Nitrogen(60, [Offer.Of("strong", null, 2000, (Nutrient.AvailableN, 0.12), (Nutrient.S, 0.06)), Offer.Of("clean", null, 2000, (Nutrient.AvailableN, 0.06))], priced: false);
        var pounds = Burden.PoundsOf(MaterialSolver.Solve(model));
        Assert.Equal(0, pounds[0], 0.05);
        Assert.Equal(1000, pounds[1], 0.05);
    }

    [Fact]
    public void Without_prices_and_with_equal_excess_the_lighter_is_taken()
    {
        var model = Nitrogen(60, [Offer.Of("weak", null, 2000, (Nutrient.AvailableN, 0.06)), Offer.Of("strong", null, 2000, (Nutrient.AvailableN, 0.12))], priced: false);
        var pounds = Burden.PoundsOf(MaterialSolver.Solve(model));
        Assert.Equal(0, pounds[0]);
        Assert.Equal(500, pounds[1], 1e-3);
    }

    [Theory]
    [InlineData(799.9, 0)]
    [InlineData(800, 0)]
    [InlineData(801, 0.1)]
    public void A_floor_beyond_the_largest_single_rate_is_missed_by_the_rest(double floorTenths, double missed)
    {
        // The meal supplies at most 1000 lb × 0.08 = 80 lb N.
        var model = Nitrogen(floorTenths / 10, [Offer.Of("meal", 1, 1000, (Nutrient.AvailableN, 0.08))], priced: true);
        Assert.Equal(missed, MaterialSolver.Solve(model).Missed[0].PoundsPerAcre, 1e-4);
    }

    [Fact]
    public void Where_two_needs_compete_under_one_ceiling_the_ceiling_holds_and_both_gaps_are_named()
    {
        // Compost is the only source of both and 10 lb of total P2O5 allows 500 lb of it: 5 lb N and 5 lb K2O.
        var compost = Offer.Of("compost", 0.1, 40000, (Nutrient.AvailableN, 0.01), (Nutrient.K2O, 0.01), (Nutrient.TotalP2O5, 0.02));
        var model = new MaterialModel(
            [new MaterialVariable(compost, 0, compost.LargestSingleRate)],
            [
                new Requirement(Nutrient.AvailableN, 0, Models.Pounds(50), null, null),
                new Requirement(Nutrient.K2O, 0, Models.Pounds(25), null, null),
                new Requirement(Nutrient.TotalP2O5, null, null, Models.Pounds(10), "above target"),
            ],
            [],
            [],
            Priced: true);
        var solution = MaterialSolver.Solve(model);
        Assert.Equal(500, solution.Amounts[0].PoundsPerAcre, 1e-3);
        Assert.Equal(45, solution.Missed[0].PoundsPerAcre, 1e-3);
        Assert.Equal(20, solution.Missed[1].PoundsPerAcre, 1e-3);
    }

    [Fact]
    public void Nothing_needed_means_nothing_spread()
    {
        var solution = MaterialSolver.Solve(Nitrogen(0, [Offer.Of("free", 0, 1000, (Nutrient.AvailableN, 0.1))], priced: true));
        Assert.Equal([default], solution.Amounts);
        Assert.True(solution.MeetsAll);
    }

    [Fact]
    public void With_nothing_offered_the_whole_floor_is_missed() =>
        Assert.Equal(40, MaterialSolver.Solve(Nitrogen(40, [], priced: false)).Missed[0].PoundsPerAcre, 1e-6);

    private static MaterialModel Nitrogen(double floor, Agronomy.Materials.OfferedMaterial[] offered, bool priced) => new(
        [.. offered.Select(o => new MaterialVariable(o, 0, o.LargestSingleRate))],
        [new Requirement(Nutrient.AvailableN, 0, Models.Pounds(floor), Models.Pounds(floor * 1.1), "high end")],
        [new Excess(Nutrient.S, default)],
        [],
        priced);
}
