using Google.OrTools.Sat;

namespace SoilAdvisor.Planning.CoverSeason;

/// <summary>
/// Solves a season with CP-SAT: first the most points, less the points for further species; of those the least money for seed, then the
/// least seed, then the better place in each bed's list. One worker and a deterministic limit: the same request gives the same season.
/// </summary>
internal sealed class SeasonSearch
{
    private const string Parameters = "num_workers:1,random_seed:0,max_deterministic_time:20,max_time_in_seconds:20";
    private const long MostPacks = 1_000_000;

    private readonly SeasonModel model;
    private readonly CpModel programme = new();
    private readonly BoolVar[] chosen;
    private readonly BoolVar[] grown;
    private readonly IntVar further;
    private readonly List<(long Cents, LinearExpr Bought)> money = [];
    private readonly List<LinearExpr> bought = [];

    private SeasonSearch(SeasonModel model)
    {
        this.model = model;
        chosen = [.. model.Options.Select((_, i) => programme.NewBoolVar($"x{i}"))];
        grown = [.. model.Species.Select((_, i) => programme.NewBoolVar($"y{i}"))];
        further = programme.NewIntVar(0, Math.Max(0, model.Species.Count), "further");
        OneInEachGap();
        Species();
        foreach (var (first, second) in model.Exclusions)
        {
            programme.AddBoolOr([chosen[first].Not(), chosen[second].Not()]);
        }

        for (var s = 0; s < model.Species.Count; s++)
        {
            Seed(s);
        }
    }

    /// <summary>Places of the chosen options, and whether that is proven to be the best.</summary>
    public static (IReadOnlyList<int> Chosen, bool Proven) Solve(SeasonModel model, CancellationToken cancel)
    {
        if (model.Options.Count == 0)
        {
            return ([], true);
        }

        return new SeasonSearch(model).Solve(cancel);
    }

    private (IReadOnlyList<int> Chosen, bool Proven) Solve(CancellationToken cancel)
    {
        var points = LinearExpr.WeightedSum(chosen, model.Options.Select(o => o.Hundredths)) - (model.HundredthsPerSpecies * further);
        var (best, proven) = Most(points) ?? ([], false);
        if (!proven)
        {
            return (best, false);
        }

        foreach (var smallest in Smallest())
        {
            cancel.ThrowIfCancellationRequested();
            if (Most(-1 * smallest) is not ({ } better, true))
            {
                return (best, true);
            }

            best = better;
        }

        return (best, true);
    }

    private IEnumerable<LinearExpr> Smallest()
    {
        if (money.Count > 0)
        {
            yield return LinearExpr.Sum(money.Select(m => m.Cents * m.Bought));
        }

        if (bought.Count > 0)
        {
            yield return LinearExpr.Sum(bought);
        }

        yield return LinearExpr.WeightedSum(chosen, model.Options.Select(o => (long)o.Rank));
    }

    // What was reached stays reached while the next aim is looked at.
    private (IReadOnlyList<int> Chosen, bool Proven)? Most(LinearExpr aim)
    {
        programme.Maximize(aim);
        var solver = new CpSolver { StringParameters = Parameters };
        var status = solver.Solve(programme);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return null;
        }

        var places = Enumerable.Range(0, chosen.Length).Where(i => solver.BooleanValue(chosen[i])).ToList();
        if (status == CpSolverStatus.Optimal)
        {
            programme.Add(aim >= (long)Math.Round(solver.ObjectiveValue));
        }

        return (places, status == CpSolverStatus.Optimal);
    }

    private void OneInEachGap()
    {
        foreach (var gap in model.Options.Index().GroupBy(o => o.Item.Gap))
        {
            programme.AddAtMostOne(gap.Select(o => chosen[o.Index]));
        }

        foreach (var (place, option) in model.Options.Index())
        {
            programme.AddImplication(chosen[place], grown[option.Species]);
        }
    }

    private void Species()
    {
        programme.Add(further >= LinearExpr.Sum(grown) - 1);
        if (model.Wish.MostSpecies is { } most)
        {
            programme.Add(LinearExpr.Sum(grown) <= most);
        }
    }

    private void Seed(int species)
    {
        var (stock, uses) = (model.Stocks[species], model.Options.Index().Where(o => o.Item.Species == species && o.Item.Grams > 0).ToList());
        if (uses.Count == 0)
        {
            return;
        }

        var needed = LinearExpr.WeightedSum(uses.Select(u => chosen[u.Index]), uses.Select(u => u.Item.Grams));
        var onHand = (long)Math.Floor(stock.OnHand.Grams + 1e-6);
        if (!stock.CanBuy)
        {
            programme.Add(needed <= onHand);
            return;
        }

        var unit = stock.Pack is { } pack ? (long)Math.Floor(pack.Grams + 1e-6) : 1;
        var most = Math.Min(MostPacks * unit, uses.Sum(u => u.Item.Grams)) / unit + 1;
        var count = programme.NewIntVar(0, most, $"buy{species}");
        programme.Add(needed <= onHand + (unit * count));
        bought.Add(unit * count);
        if (stock.PricePerKilogram is { } price)
        {
            money.Add((Math.Max(1, (long)Math.Round(price.Value * unit / 1000 * 10_000, MidpointRounding.AwayFromZero)), count));
        }
    }
}
