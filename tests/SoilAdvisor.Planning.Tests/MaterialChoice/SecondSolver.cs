using Google.OrTools.LinearSolver;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.MaterialChoice;

/// <summary>The same programme written anew for CLP, a simplex code of another house that OR-Tools carries.</summary>
internal static class SecondSolver
{
    /// <summary>Least burden in money; null when no plan keeps all limits.</summary>
    public static double? LeastMoney(MaterialModel model)
    {
        using var solver = Solver.CreateSolver("CLP");
        var rates = model.Variables.Select(v => solver.MakeNumVar(0, v.Most.PoundsPerAcre, "")).ToArray();
        foreach (var requirement in model.Requirements)
        {
            var supply = rates.Select((x, i) => x * (requirement.PlantingIndex is null || model.Variables[i].PlantingIndex == requirement.PlantingIndex ? model.Variables[i].Share(requirement.Nutrient) : 0)).Aggregate(new LinearExpr(), (a, b) => a + b);
            if (requirement.Floor is { } floor)
            {
                solver.Add(supply >= floor.PoundsPerAcre);
            }

            if (requirement.Ceiling is { } ceiling)
            {
                solver.Add(supply <= ceiling.PoundsPerAcre);
            }
        }

        var burden = rates.Select((x, i) => x * (((double)(model.Variables[i].Offered.PricePerKilogram?.Value ?? 0) * 0.45359237) + MaterialModel.MassBurden)).Aggregate(new LinearExpr(), (a, b) => a + b);
        foreach (var excess in model.Excesses)
        {
            var above = solver.MakeNumVar(0, double.PositiveInfinity, "");
            solver.Add(rates.Select((x, i) => x * model.Variables[i].Share(excess.Nutrient)).Aggregate(new LinearExpr(), (a, b) => a + b) - above <= excess.Above.PoundsPerAcre);
            burden += above * MaterialModel.ExcessBurden;
        }

        solver.Minimize(burden);
        return solver.Solve() switch
        {
            Solver.ResultStatus.OPTIMAL => solver.Objective().Value(),
            Solver.ResultStatus.INFEASIBLE => null,
            var other => throw new InvalidOperationException($"CLP ended with {other}."),
        };
    }
}
