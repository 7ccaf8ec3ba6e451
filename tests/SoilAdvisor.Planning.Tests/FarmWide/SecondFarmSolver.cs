using Google.OrTools.LinearSolver;
using SoilAdvisor.Planning.FarmWide;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.FarmWide;

/// <summary>
/// The same farm written anew for CBC, a branch-and-bound code of another house that OR-Tools carries: switches with the plainest large
/// numbers, no tightening, packs as they stand in the words of the model.
/// </summary>
internal static class SecondFarmSolver
{
    public static double Least(FarmModel model)
    {
        using var solver = Solver.CreateSolver("CBC");
        var burden = new LinearExpr();
        var used = model.Products.Select((_, p) => solver.MakeBoolVar($"u{p}")).ToArray();
        var taken = model.Products.Select(_ => new LinearExpr()).ToArray();
        for (var g = 0; g < model.Groups.Count; g++)
        {
            burden += Bed(solver, model, g, used, taken);
        }

        for (var p = 0; p < used.Length; p++)
        {
            var product = model.Products[p];
            var pack = product.PackPounds ?? 1;
            var packs = product.PackPounds is null ? solver.MakeNumVar(0, 1e6, $"n{p}") : solver.MakeIntVar(0, 1e6, $"n{p}");
            solver.Add(taken[p] <= product.StockPounds + (packs * pack));
            burden += packs * (pack * product.PricePerPound);
            if (product.Freight > 0)
            {
                var delivered = solver.MakeBoolVar($"d{p}");
                solver.Add(packs * pack <= delivered * 5000);
                burden += delivered * product.Freight;
            }
        }

        if (model.Limits.Products is { } most)
        {
            solver.Add(new SumVarArray(used) <= most);
        }

        solver.Minimize(burden);
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? solver.Objective().Value() : throw new InvalidOperationException("CBC found no optimum.");
    }

    private static LinearExpr Bed(Solver solver, FarmModel model, int g, Variable[] used, LinearExpr[] taken)
    {
        var group = model.Groups[g];
        var burden = new LinearExpr();
        var rates = group.Model.Variables.Select((v, i) => solver.MakeNumVar(0, v.Most.PoundsPerAcre, $"x{g}_{i}")).ToArray();
        var on = rates.Select((_, i) => solver.MakeBoolVar($"z{g}_{i}")).ToArray();
        for (var i = 0; i < rates.Length; i++)
        {
            solver.Add(rates[i] <= on[i] * group.Model.Variables[i].Most.PoundsPerAcre);
            solver.Add(rates[i] >= on[i] * (model.Limits.SmallestRate?.PoundsPerAcre ?? 0));
            solver.Add(on[i] <= used[i]);
            taken[i] += rates[i] * group.Acres;
            burden += rates[i] * (MaterialModel.MassBurden * group.Acres);
            burden += on[i] * ((double)(model.Limits.LabourPerPass?.Value ?? 0) * group.Beds.Count);
        }

        if (model.Limits.ProductsPerBed is { } most)
        {
            solver.Add(new SumVarArray(on) <= most);
        }

        for (var r = 0; r < group.Model.Requirements.Count; r++)
        {
            var requirement = group.Model.Requirements[r];
            var supply = rates.Select((x, i) => x * group.Model.Variables[i].Share(requirement.Nutrient)).Aggregate(new LinearExpr(), (a, b) => a + b);
            if (requirement.Ceiling is { } ceiling)
            {
                solver.Add(supply <= ceiling.PoundsPerAcre);
            }

            if (group.Reached(r) is { } floor)
            {
                var missed = solver.MakeNumVar(0, floor, $"s{g}_{r}");
                solver.Add(supply + missed >= floor);
                burden += missed * (FarmModel.MissedBurden * group.Acres);
            }
        }

        for (var e = 0; e < group.Model.Excesses.Count; e++)
        {
            var above = solver.MakeNumVar(0, double.PositiveInfinity, $"e{g}_{e}");
            solver.Add(rates.Select((x, i) => x * group.Model.Variables[i].Share(group.Model.Excesses[e].Nutrient)).Aggregate(new LinearExpr(), (a, b) => a + b) - above <= group.Model.Excesses[e].Above.PoundsPerAcre);
            burden += above * (MaterialModel.ExcessBurden * group.Acres);
        }

        return burden;
    }
}
