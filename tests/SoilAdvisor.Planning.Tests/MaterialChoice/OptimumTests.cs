using CsCheck;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.MaterialChoice;

public class OptimumTests
{
    [Fact]
    public void The_optimum_is_the_best_of_all_basic_solutions()
    {
        var (met, notMet) = (0, 0);
        Models.Any(mostMaterials: 3, priced: true).Where(m => m.Variables.Count <= 3).Sample(
            model =>
            {
                var certain = BasicSolutions.LeastMoney(model);
                var solution = MaterialSolver.Solve(model);
                Assert.Equal(certain is not null, solution.MeetsAll);
                _ = certain is null ? Interlocked.Increment(ref notMet) : Interlocked.Increment(ref met);
                if (certain is { } least)
                {
                    AssertSame(least, Burden.Money(model, Burden.PoundsOf(solution)));
                }
            },
            seed: "0000KOIa6n83",
            iter: 150,
            threads: 1);
        Assert.True(met > 10 && notMet > 10, $"The cases must hold both kinds: {met} met, {notMet} not.");
    }

    [Fact]
    public void The_optimum_agrees_with_a_second_solver_on_two_hundred_random_beds()
    {
        var (met, notMet) = (0, 0);
        Models.Any(mostMaterials: 30, priced: true).Sample(
            model =>
            {
                var second = SecondSolver.LeastMoney(model);
                var solution = MaterialSolver.Solve(model);
                Assert.Equal(second is not null, solution.MeetsAll);
                _ = second is null ? Interlocked.Increment(ref notMet) : Interlocked.Increment(ref met);
                if (second is { } least)
                {
                    AssertSame(least, Burden.Money(model, Burden.PoundsOf(solution)));
                }
            },
            seed: "0000KOIa6n83",
            iter: 200,
            threads: 1);
        Assert.True(met > 50, $"Too few cases can be met: {met} met, {notMet} not.");
    }

    // Both answer to about one part in a million.
    private static void AssertSame(double expected, double actual) =>
        Assert.InRange(actual, expected - (1e-5 * (1 + expected)), expected + (1e-5 * (1 + expected)));
}
