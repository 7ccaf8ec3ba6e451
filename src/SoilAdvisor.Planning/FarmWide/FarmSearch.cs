using System.Diagnostics;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>
/// Finds a plan for the whole farm and proves how good it is. The relaxed programme bounds it from below and says which products are
/// promising; a walk over product sets gives a good plan at once; the whole programme, started from that plan, betters it and lifts the
/// bound. One model over single beds and all products finds nothing in useful time: docs/performance.md compares the ways.
/// </summary>
internal static class FarmSearch
{
    /// <summary>Share of the objective that a plan leaves unproven: prices of materials are not known better.</summary>
    public const double WantedGap = 0.02;

    private const long MostBranches = 60_000;
    private const double FirstShareOfTime = 0.25;
    private const double MostSecondsForFirst = 2.5;

    /// <summary>The best plan found and its bound.</summary>
    /// <param name="model">The farm.</param>
    /// <param name="wanted">Share of the objective that may be left unproven.</param>
    /// <param name="cancel">Stops between two solves.</param>
    public static FarmSolution Solve(FarmModel model, double wanted, CancellationToken cancel)
    {
        var seconds = model.Limits.Seconds;
        var (relaxed, promising) = Relaxed(model);
        if (IsWhole(model, relaxed))
        {
            return relaxed;
        }

        var bound = relaxed.Objective;
        cancel.ThrowIfCancellationRequested();
        var first = First(model, promising, Math.Min(MostSecondsForFirst, seconds * FirstShareOfTime), cancel) ?? Nothing(model);
        first = first with { Bound = Math.Min(bound, first.Objective) };
        if (first.Gap <= wanted)
        {
            return first with { Ended = SearchEnd.Proven };
        }

        cancel.ThrowIfCancellationRequested();
        using var programme = new FarmProgramme(model, null, whole: true);
        if (programme.Solve(new Effort(wanted, MostBranches, seconds * (1 - FirstShareOfTime)), first) is not { } all)
        {
            return first with { Ended = SearchEnd.Time };
        }

        var best = all.Objective <= first.Objective ? all : first;
        best = best with { Bound = Math.Min(best.Objective, Math.Max(bound, all.Bound)) };
        return best with { Ended = best.Gap <= wanted + 1e-9 ? SearchEnd.Proven : all.Ended };
    }

    private static (FarmSolution Plan, IReadOnlyList<int> Promising) Relaxed(FarmModel model)
    {
        using var relaxed = new FarmProgramme(model, null, whole: false);
        var solution = relaxed.Solve(new Effort(0, long.MaxValue, model.Limits.Seconds))
            ?? throw new InvalidOperationException("Spreading nothing keeps every limit, yet the solver found no relaxed plan.");
        return (solution, [.. relaxed.Used()]);
    }

    // Where nothing is counted in whole numbers the relaxed plan is the plan: only a pair that must not meet can spoil it.
    private static bool IsWhole(FarmModel model, FarmSolution relaxed) =>
        !model.CountsWholes && model.Groups.Select((g, i) => new MaterialPlan(g.Model, MaterialSolver.Tidy(g.Model, (double[])relaxed.Rates[i].Clone()))).All(p => !p.HoldsForbiddenPair);

    private static FarmSolution? First(FarmModel model, IReadOnlyList<int> promising, double seconds, CancellationToken cancel)
    {
        using var search = new ProductSetSearch(model);
        var clock = Stopwatch.StartNew();
        return search.From(promising, () => clock.Elapsed.TotalSeconds > seconds || cancel.IsCancellationRequested);
    }

    private static FarmSolution Nothing(FarmModel model)
    {
        var missed = model.Groups.Sum(g => g.Acres * Enumerable.Range(0, g.Model.Requirements.Count).Sum(r => g.Reached(r) ?? 0)) * FarmModel.MissedBurden;
        return new FarmSolution([.. model.Groups.Select(g => new double[g.Model.Variables.Count])], new double[model.Products.Count], missed, 0, SearchEnd.Time);
    }
}
