using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Beds;

/// <summary>The best choice of materials in which no two are spread that must not meet.</summary>
/// <param name="Model">The programme that was solved last.</param>
/// <param name="Solution">Its answer.</param>
internal sealed record MaterialPlan(MaterialModel Model, MaterialSolution Solution)
{
    /// <summary>True when two materials are spread that must not meet.</summary>
    public bool HoldsForbiddenPair => FirstForbiddenPair() is not null;

    /// <summary>
    /// Solves; where the answer holds a pair that must not meet, solves once without the one and once without the other and keeps the
    /// better. Pairs are few, so the tree stays small.
    /// </summary>
    /// <param name="model">The programme.</param>
    public static MaterialPlan Best(MaterialModel model)
    {
        var plan = new MaterialPlan(model, MaterialSolver.Solve(model));
        if (plan.FirstForbiddenPair() is not { } pair)
        {
            return plan;
        }

        var (without, other) = (Best(Without(model, pair.First)), Best(Without(model, pair.Second)));
        return other.Rank().CompareTo(without.Rank()) < 0 ? other : without;
    }

    private static MaterialModel Without(MaterialModel model, Material material) =>
        model with { Variables = [.. model.Variables.Where(v => v.Offered.Material.Id != material.Id)] };

    // What is missed counts first, each floor by its share; then the burden.
    private (double Missed, double First, double Second) Rank()
    {
        var missed = 0.0;
        for (var r = 0; r < Model.Requirements.Count; r++)
        {
            missed += Solution.Missed[r].IsZero ? 0 : Solution.Missed[r].PoundsPerAcre / Model.Requirements[r].Floor!.Value.PoundsPerAcre;
        }

        var (first, second) = Model.BurdenOf(Solution);
        return (Math.Round(missed, 6), first, second);
    }

    private (Material First, Material Second)? FirstForbiddenPair()
    {
        var used = Model.Variables.Where((_, i) => !Solution.Amounts[i].IsZero).Select(v => v.Offered.Material).DistinctBy(m => m.Id).ToList();
        foreach (var a in used)
        {
            if (used.Find(b => NeverTogether.Hold(a, b)) is { } b)
            {
                return (a, b);
            }
        }

        return null;
    }
}
