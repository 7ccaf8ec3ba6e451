using Google.OrTools.LinearSolver;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>
/// A <see cref="MaterialModel"/> inside the solver, in pounds per acre so that all numbers are of similar size. Built once for a bed;
/// the elastic and the second-stage solves only change bounds and objective and start from the basis before.
/// </summary>
internal sealed class LinearProgramme : IDisposable
{
    // Slack between two stages, so that rounding in the first does not empty the second; too small to buy anything with. Where the
    // solver still finds the second stage empty, the next is tried: 0.0001 lb/acre is below every figure that is shown.
    private static readonly double[] StageSlacks = [1e-8, 1e-6, 1e-4];

    private readonly MaterialModel model;
    private readonly Solver solver;
    private readonly MPSolverParameters parameters = new();
    private readonly Variable[] amounts;
    private readonly Variable[] excesses;
    private readonly Variable?[] missing;
    private readonly Constraint mostExcess;

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
        mostExcess = solver.MakeConstraint(double.NegativeInfinity, double.PositiveInfinity, "excess");
        foreach (var excess in excesses)
        {
            mostExcess.SetCoefficient(excess, 1);
        }
    }

    /// <summary>Rates in pounds per acre with the least burden under all requirements; null when they cannot be met together.</summary>
    public double[]? LeastBurden() => model.Priced ? LeastMoney() : LeastExcessThenMass();

    /// <summary>
    /// Rates that miss the smallest sum of shares of the floors, each floor counting alike, and carry the least burden among those.
    /// </summary>
    public double[] LeastMissing()
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

        if (!IsOptimal())
        {
            throw new InvalidOperationException("Spreading nothing keeps every ceiling, yet the solver found no plan.");
        }

        var found = Amounts();
        var missed = missing.Select(m => m?.SolutionValue() ?? 0).ToArray();
        foreach (var slack in StageSlacks)
        {
            for (var i = 0; i < missing.Length; i++)
            {
                missing[i]?.SetUb(missed[i] + slack);
            }

            if (LeastBurden() is { } best)
            {
                return best;
            }
        }

        return found;
    }

    public void Dispose()
    {
        parameters.Dispose();
        solver.Dispose();
    }

    private double[] Amounts() => [.. amounts.Select(a => a.SolutionValue())];

    private double[]? LeastMoney()
    {
        var objective = NewObjective();
        for (var i = 0; i < amounts.Length; i++)
        {
            objective.SetCoefficient(amounts[i], MaterialModel.PricePerPound(model.Variables[i]) + MaterialModel.MassBurden);
        }

        foreach (var excess in excesses)
        {
            objective.SetCoefficient(excess, model.ExcessPenalty);
        }

        return IsOptimal() ? Amounts() : null;
    }

    private double[]? LeastExcessThenMass()
    {
        var objective = NewObjective();
        foreach (var excess in excesses)
        {
            objective.SetCoefficient(excess, 1);
        }

        mostExcess.SetUb(double.PositiveInfinity);
        if (!IsOptimal())
        {
            return null;
        }

        var (found, least) = (Amounts(), objective.Value());
        objective = NewObjective();
        foreach (var amount in amounts)
        {
            objective.SetCoefficient(amount, 1);
        }

        foreach (var slack in StageSlacks)
        {
            mostExcess.SetUb((least * (1 + slack)) + slack);
            if (IsOptimal())
            {
                return Amounts();
            }
        }

        return found;
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

    // The solver starts from the basis before; where that leads it astray numerically, it starts once more from nothing.
    private bool IsOptimal()
    {
        parameters.SetIntegerParam(MPSolverParameters.IntegerParam.INCREMENTALITY, (int)MPSolverParameters.IncrementalityValues.INCREMENTALITY_ON);
        var status = solver.Solve(parameters);
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.INFEASIBLE))
        {
            parameters.SetIntegerParam(MPSolverParameters.IntegerParam.INCREMENTALITY, (int)MPSolverParameters.IncrementalityValues.INCREMENTALITY_OFF);
            status = solver.Solve(parameters);
        }

        return status == Solver.ResultStatus.OPTIMAL;
    }
}
