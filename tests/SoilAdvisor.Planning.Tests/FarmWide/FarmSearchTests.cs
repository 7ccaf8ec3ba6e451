using SoilAdvisor.Planning.FarmWide;

namespace SoilAdvisor.Planning.Tests.FarmWide;

public class FarmSearchTests
{
    // The solvers answer to about one part in a million.
    private const double Same = 1e-4;

    [Fact]
    public void The_best_farm_agrees_with_a_second_solver_on_two_hundred_random_farms()
    {
        var binding = 0;
        for (var seed = 0; seed < 200; seed++)
        {
            var model = Farms.Random(seed, groups: 2 + (seed % 2), products: 3 + (seed % 3));
            var found = FarmSearch.Solve(model, 0, CancellationToken.None);
            var least = SecondFarmSolver.Least(model);
            FarmLaws.Hold(model, found);
            Assert.True(Math.Abs(found.Objective - least) <= Same * (1 + Math.Abs(least)), $"Farm {seed}: {found.Objective} here, {least} by CBC.");
            Assert.True(found.Bound <= least + (Same * (1 + Math.Abs(least))), $"Farm {seed}: a bound of {found.Bound} above the optimum {least}.");
            binding += found.Objective > 1.02 * Relaxed(model) ? 1 : 0;
        }

        Assert.True(binding >= 100, $"Whole packs and limits must matter in most farms; they did in {binding}.");
    }

    [Fact]
    public void The_walk_over_product_sets_keeps_every_limit_and_is_never_better_than_the_best()
    {
        var found = 0;
        for (var seed = 0; seed < 60; seed++)
        {
            var model = Farms.Random(seed, groups: 3, products: 5);
            using var relaxed = new FarmProgramme(model, null, whole: false);
            relaxed.Solve(new Effort(0, long.MaxValue, 20));
            using var walk = new ProductSetSearch(model);
            if (walk.From([.. relaxed.Used()], () => false) is not { } plan)
            {
                continue;
            }

            found++;
            FarmLaws.Hold(model, plan);
            var least = SecondFarmSolver.Least(model);
            Assert.True(plan.Objective >= least - (Same * (1 + least)), $"Farm {seed}: {plan.Objective} is better than the best, {least}.");
        }

        Assert.True(found >= 50, $"A plan on {found} of 60 farms.");
    }

    [Fact]
    public void Every_plan_keeps_packs_stock_products_and_least_rates()
    {
        for (var seed = 200; seed < 260; seed++)
        {
            var model = Farms.Random(seed, groups: 3, products: 5);
            FarmLaws.Hold(model, FarmSearch.Solve(model, FarmSearch.WantedGap, CancellationToken.None));
        }
    }

    [Fact]
    public void The_same_farm_gives_the_same_plan()
    {
        var model = Farms.Random(7, groups: 3, products: 6);
        var (one, two) = (FarmSearch.Solve(model, FarmSearch.WantedGap, CancellationToken.None), FarmSearch.Solve(model, FarmSearch.WantedGap, CancellationToken.None));
        Assert.Equal(one.Objective, two.Objective);
        Assert.Equal(one.Bought, two.Bought);
        Assert.Equal(one.Rates.SelectMany(r => r), two.Rates.SelectMany(r => r));
    }

    private static double Relaxed(FarmModel model)
    {
        using var programme = new FarmProgramme(model, null, whole: false);
        return programme.Solve(new Effort(0, long.MaxValue, 20))!.Objective;
    }
}
