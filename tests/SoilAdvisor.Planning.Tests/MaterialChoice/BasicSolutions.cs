using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.MaterialChoice;

/// <summary>
/// The slow and certain way: an optimum of a linear programme lies at a basic solution, so every choice of as many equations as there
/// are unknowns is solved by elimination, and the best one that keeps all limits is taken. Shares nothing with the solver but the data.
/// </summary>
internal static class BasicSolutions
{
    /// <summary>Least burden in money; null when no plan keeps all limits.</summary>
    public static double? LeastMoney(MaterialModel model)
    {
        var (limits, cost) = Write(model);
        double? best = null;
        foreach (var choice in Choices(limits.Count, cost.Length))
        {
            if (Corner(limits, choice, cost.Length) is { } corner && limits.All(l => Keeps(l, corner)))
            {
                var burden = corner.Zip(cost, (x, c) => x * c).Sum();
                best = best is null || burden < best ? burden : best;
            }
        }

        return best;
    }

    // Unknowns: a rate for each variable, then the excess of each unwanted supply. Every limit reads a · x ≤ b.
    private static (List<(double[] Row, double Bound)> Limits, double[] Cost) Write(MaterialModel model)
    {
        var rates = model.Variables.Count;
        var unknowns = rates + model.Excesses.Count;
        var limits = new List<(double[], double)>();
        for (var i = 0; i < unknowns; i++)
        {
            limits.Add((Unit(unknowns, i, -1), 0));
            if (i < rates)
            {
                limits.Add((Unit(unknowns, i, 1), model.Variables[i].Most.PoundsPerAcre));
            }
        }

        foreach (var requirement in model.Requirements)
        {
            var row = new double[unknowns];
            for (var i = 0; i < rates; i++)
            {
                row[i] = requirement.PlantingIndex is null || model.Variables[i].PlantingIndex == requirement.PlantingIndex ? model.Variables[i].Share(requirement.Nutrient) : 0;
            }

            if (requirement.Ceiling is { } ceiling)
            {
                limits.Add((row, ceiling.PoundsPerAcre));
            }

            if (requirement.Floor is { } floor)
            {
                limits.Add(([.. row.Select(v => -v)], -floor.PoundsPerAcre));
            }
        }

        for (var e = 0; e < model.Excesses.Count; e++)
        {
            var row = Unit(unknowns, rates + e, -1);
            for (var i = 0; i < rates; i++)
            {
                row[i] = model.Variables[i].Share(model.Excesses[e].Nutrient);
            }

            limits.Add((row, model.Excesses[e].Above.PoundsPerAcre));
        }

        double[] cost =
        [
            .. model.Variables.Select(v => (v.Offered.PricePerKilogram is { } price ? (double)price.Value * 0.45359237 : 0) + MaterialModel.MassBurden),
            .. model.Excesses.Select(_ => MaterialModel.ExcessBurden),
        ];
        return (limits, cost);
    }

    private static double[] Unit(int length, int at, double value)
    {
        var row = new double[length];
        row[at] = value;
        return row;
    }

    private static bool Keeps((double[] Row, double Bound) limit, double[] corner) =>
        limit.Row.Zip(corner, (a, x) => a * x).Sum() <= limit.Bound + (1e-7 * (1 + Math.Abs(limit.Bound)));

    private static IEnumerable<int[]> Choices(int from, int take)
    {
        var choice = Enumerable.Range(0, take).ToArray();
        while (true)
        {
            yield return choice;
            var i = take - 1;
            while (i >= 0 && choice[i] == from - take + i)
            {
                i--;
            }

            if (i < 0)
            {
                yield break;
            }

            choice[i]++;
            for (var j = i + 1; j < take; j++)
            {
                choice[j] = choice[j - 1] + 1;
            }
        }
    }

    // Gaussian elimination with the largest pivot; null when the equations do not fix one point.
    private static double[]? Corner(List<(double[] Row, double Bound)> limits, int[] choice, int unknowns)
    {
        var a = choice.Select(c => limits[c].Row.Append(limits[c].Bound).ToArray()).ToArray();
        for (var column = 0; column < unknowns; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < unknowns; row++)
            {
                pivot = Math.Abs(a[row][column]) > Math.Abs(a[pivot][column]) ? row : pivot;
            }

            if (Math.Abs(a[pivot][column]) < 1e-9)
            {
                return null;
            }

            (a[column], a[pivot]) = (a[pivot], a[column]);
            for (var row = 0; row < unknowns; row++)
            {
                if (row != column && a[row][column] != 0)
                {
                    var factor = a[row][column] / a[column][column];
                    for (var j = column; j <= unknowns; j++)
                    {
                        a[row][j] -= factor * a[column][j];
                    }
                }
            }
        }

        return [.. Enumerable.Range(0, unknowns).Select(i => a[i][unknowns] / a[i][i])];
    }
}
