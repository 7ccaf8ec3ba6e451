using Google.OrTools.LinearSolver;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>
/// A <see cref="MaterialModel"/> inside the solver, in pounds per acre so that all numbers are of similar size. Built once for a bed;
/// the elastic and the second-stage solves only change bounds and objective and start from the basis before.
/// </summary>
internal sealed class LinearProgramme : IDisposable
{
    // Slack between two stages, so that rounding in the first never empties the second; too small to buy anything with.
    private const double StageSlack = 1e-8;

    private readonly MaterialModel model;
    private readonly Solver solver;
    private readonly MPSolverParameters parameters = new();
    private readonly Variable[] amounts;
    private readonly Variable[] excesses;
    private readonly Variable?[] missing;

    public LinearProgramme(MaterialModel model)
    {
        this.model = model;
        solver = Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("The linear solver GLOP is not in this build of OR-Tools.");
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.PRIMAL_TOLERANCE, 1e-9);
        amounts = [.. model.Variables.Select((v, i) => solver.MakeNumVar(0, v.Most.PoundsPerAcre, $"x{i}"))];
        excesses = [.. model.Excesses.Select((_, i) => solver.MakeNumVar(0, double.PositiveInfinity, $"e{i}"))];
        missing = [.. model.Requirements.Select((r, i) => r.AsksForSomething ? solver.MakeNumVar(0, 0, $"s{i}") : null)];
        AddRequirements();
        AddExcesses();
        AddSharedLimits();
    }

    /// <summary>Least burden under all requirements; false when they cannot be met together.</summary>
    public bool MinimiseBurden() => model.Priced ? MinimiseMoney() : MinimiseExcessThenMass();

    /// <summary>Finds the smallest sum of missed shares of the floors, each floor counting alike, and allows exactly that.</summary>
    public void AllowLeastMissing()
    {
        var objective = NewObjective();
        for (var i = 0; i < missing.Length; i++)
        {
            if (missing[i] is { } variable)
            {
                var floor = model.Requirements[i].Floor!.Value.PoundsPerAcre;
                variable.SetUb(floor);
                objective.SetCoefficient(variable, 1 / floor);
            }
        }

        if (!Optimal())
        {
            throw new InvalidOperationException("Spreading nothing keeps every ceiling, yet the solver found no plan.");
        }

        var found = missing.Select(m => m?.SolutionValue() ?? 0).ToArray();
        for (var i = 0; i < missing.Length; i++)
        {
            missing[i]?.SetUb(found[i] + StageSlack);
        }
    }

    /// <summary>Rates in pounds per acre, in the order of the model.</summary>
    public double[] Amounts() => [.. amounts.Select(a => a.SolutionValue())];

    public void Dispose()
    {
        parameters.Dispose();
        solver.Dispose();
    }

    private bool MinimiseMoney()
    {
        var objective = NewObjective();
        for (var i = 0; i < amounts.Length; i++)
        {
            objective.SetCoefficient(amounts[i], MaterialModel.PricePerPound(model.Variables[i]) + MaterialModel.MassBurden);
        }

        foreach (var excess in excesses)
        {
            objective.SetCoefficient(excess, MaterialModel.ExcessBurden);
        }

        return Optimal();
    }

    private bool MinimiseExcessThenMass()
    {
        var objective = NewObjective();
        foreach (var excess in excesses)
        {
            objective.SetCoefficient(excess, 1);
        }

        if (!Optimal())
        {
            return false;
        }

        var row = solver.MakeConstraint(0, objective.Value() * (1 + StageSlack) + StageSlack, "least excess");
        foreach (var excess in excesses)
        {
            row.SetCoefficient(excess, 1);
        }

        objective = NewObjective();
        foreach (var amount in amounts)
        {
            objective.SetCoefficient(amount, 1);
        }

        return Optimal();
    }

    private void AddRequirements()
    {
        for (var r = 0; r < model.Requirements.Count; r++)
        {
            var requirement = model.Requirements[r];
            if (requirement.Ceiling is { } ceiling)
            {
                Fill(solver.MakeConstraint(double.NegativeInfinity, ceiling.PoundsPerAcre, $"ceiling{r}"), requirement);
            }

            if (missing[r] is { } variable)
            {
                var row = solver.MakeConstraint(requirement.Floor!.Value.PoundsPerAcre, double.PositiveInfinity, $"floor{r}");
                Fill(row, requirement);
                row.SetCoefficient(variable, 1);
            }
        }
    }

    private void Fill(Constraint row, Requirement requirement)
    {
        for (var i = 0; i < amounts.Length; i++)
        {
            if (requirement.Counts(model.Variables[i].PlantingIndex) && model.Variables[i].Share(requirement.Nutrient) is var share && share != 0)
            {
                row.SetCoefficient(amounts[i], share);
            }
        }
    }

    private void AddExcesses()
    {
        for (var e = 0; e < excesses.Length; e++)
        {
            var row = solver.MakeConstraint(double.NegativeInfinity, model.Excesses[e].Above.PoundsPerAcre, $"excess{e}");
            row.SetCoefficient(excesses[e], -1);
            for (var i = 0; i < amounts.Length; i++)
            {
                if (model.Variables[i].Share(model.Excesses[e].Nutrient) is var share && share != 0)
                {
                    row.SetCoefficient(amounts[i], share);
                }
            }
        }
    }

    private void AddSharedLimits()
    {
        foreach (var limit in model.SharedLimits)
        {
            var row = solver.MakeConstraint(double.NegativeInfinity, limit.Most.PoundsPerAcre, "one day");
            for (var i = 0; i < amounts.Length; i++)
            {
                if (limit.Counts(model.Variables[i]))
                {
                    row.SetCoefficient(amounts[i], 1);
                }
            }
        }
    }

    private Objective NewObjective()
    {
        var objective = solver.Objective();
        objective.Clear();
        objective.SetMinimization();
        return objective;
    }

    private bool Optimal() => solver.Solve(parameters) == Solver.ResultStatus.OPTIMAL;
}
