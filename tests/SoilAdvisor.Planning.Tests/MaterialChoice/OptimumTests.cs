using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.MaterialChoice;

public class OptimumTests
{
    [Fact]
    public void The_optimum_is_the_best_of_all_basic_solutions()
    {
        var (met, notMet) = Compare(Models.Fixed(400, mostMaterials: 3).Where(m => m.Variables.Count <= 3), BasicSolutions.LeastMoney);
        Assert.True(met >= 10 && notMet >= 10, $"The cases must hold both kinds: {met} met, {notMet} not.");
    }

    [Fact]
    public void The_optimum_agrees_with_a_second_solver_on_two_hundred_random_beds()
    {
        var (met, notMet) = Compare(Models.Fixed(200, mostMaterials: 30), SecondSolver.LeastMoney);
        Assert.Equal(200, met + notMet);
        Assert.True(met >= 50 && notMet >= 10, $"The cases must hold both kinds: {met} met, {notMet} not.");
    }

    private static (int Met, int NotMet) Compare(IEnumerable<MaterialModel> models, Func<MaterialModel, double?> independent)
    {
        var (met, notMet) = (0, 0);
        foreach (var model in models)
        {
            var solution = MaterialSolver.Solve(model);
            if (independent(model) is { } least)
            {
                met++;
                Assert.True(solution.MeetsAll);
                AssertSame(least, Burden.Money(model, Burden.PoundsOf(solution)));
            }
            else
            {
                notMet++;
                Assert.False(solution.MeetsAll);
            }
        }

        return (met, notMet);
    }

    // Both answer to about one part in a million. Leaving out rates below 0.05 lb/acre may save what 0.0001 lb of a nutrient costs:
    // at 2 a pound and half a percent content, 0.04.
    private static void AssertSame(double expected, double actual) =>
        Assert.InRange(actual, expected - (1e-5 * (1 + expected)) - 0.04, expected + (1e-5 * (1 + expected)));
}
