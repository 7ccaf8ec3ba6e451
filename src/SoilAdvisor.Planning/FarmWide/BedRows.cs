using Google.OrTools.LinearSolver;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>The floors, ceilings and unwanted excess of one group of beds as rows of the farm's programme.</summary>
internal static class BedRows
{
    public static void Add(Solver solver, Objective objective, NeedGroup group, Variable[] amounts, double excessBurden, double missedBurden, Func<string> name)
    {
        var model = group.Model;
        for (var r = 0; r < model.Requirements.Count; r++)
        {
            var requirement = model.Requirements[r];
            if (requirement.Ceiling is { } ceiling)
            {
                Fill(solver.MakeConstraint(double.NegativeInfinity, ceiling.PoundsPerAcre, name()), model, amounts, v => requirement.Counts(v.PlantingIndex) ? v.Share(requirement.Nutrient) : 0);
            }

            if (group.Reached(r) is { } floor && floor > Requirement.RoundingPoundsPerAcre)
            {
                var missed = solver.MakeNumVar(0, floor, name());
                objective.SetCoefficient(missed, missedBurden * group.Acres);
                var row = solver.MakeConstraint(floor, double.PositiveInfinity, name());
                row.SetCoefficient(missed, 1);
                Fill(row, model, amounts, v => requirement.Counts(v.PlantingIndex) ? v.Share(requirement.Nutrient) : 0);
            }
        }

        foreach (var excess in model.Excesses)
        {
            var above = solver.MakeNumVar(0, double.PositiveInfinity, name());
            objective.SetCoefficient(above, excessBurden * group.Acres);
            var row = solver.MakeConstraint(double.NegativeInfinity, excess.Above.PoundsPerAcre, name());
            row.SetCoefficient(above, -1);
            Fill(row, model, amounts, v => v.Share(excess.Nutrient));
        }

        foreach (var limit in model.SharedLimits)
        {
            Fill(solver.MakeConstraint(double.NegativeInfinity, limit.Most.PoundsPerAcre, name()), model, amounts, v => limit.Counts(v) ? 1 : 0);
        }
    }

    private static void Fill(Constraint row, MaterialModel model, Variable[] amounts, Func<MaterialVariable, double> share)
    {
        for (var i = 0; i < amounts.Length; i++)
        {
            if (share(model.Variables[i]) is var coefficient && coefficient != 0)
            {
                row.SetCoefficient(amounts[i], coefficient);
            }
        }
    }
}
