namespace SoilAdvisor.Planning.FarmWide;

/// <summary>
/// A good plan soon: walks over sets of products, each judged by one linear programme, and rounds what is bought to whole packs. A step is
/// tried with money by the pound first, which can only be too cheap; only where that beats the best plan are packs, passes and deliveries
/// counted. The order of steps is fixed and their number limited, so the same farm gives the same plan.
/// </summary>
internal sealed class ProductSetSearch : IDisposable
{
    private const int MostSteps = 2500;
    private const double Better = 1e-6;
    private const double Dust = 1e-6;

    private readonly FarmModel model;
    private readonly RatesProgramme programme;
    private readonly int most;
    private int steps;

    public ProductSetSearch(FarmModel model)
    {
        this.model = model;
        programme = new RatesProgramme(model);
        most = Math.Min(model.Limits.Products ?? int.MaxValue, model.Products.Count);
    }

    /// <summary>The best plan found from a start; null when none keeps all limits.</summary>
    /// <param name="promising">Products, the most promising first.</param>
    /// <param name="until">When to stop at the latest.</param>
    public FarmSolution? From(IReadOnlyList<int> promising, Func<bool> until)
    {
        var set = Fewest([.. promising]);
        var best = Judge(set);
        bool Stop() => steps >= MostSteps || until();
        for (var improved = true; improved && !Stop();)
        {
            improved = false;
            foreach (var step in Steps(set, () => best?.Objective ?? double.MaxValue).TakeWhile(_ => !Stop()))
            {
                if (Judge(step) is { } found && found.Objective < (best?.Objective ?? double.MaxValue) - Better)
                {
                    (best, set, improved) = (found, step, true);
                    break;
                }
            }
        }

        return best;
    }

    public void Dispose() => programme.Dispose();

    // Too many promising products: the one that is missed least goes first.
    private HashSet<int> Fewest(HashSet<int> set)
    {
        while (set.Count > most)
        {
            set.Remove(set.Order().MinBy(p => AtBest([.. set.Where(other => other != p)])));
        }

        return set;
    }

    // One less, one more, one for another, each only where money by the pound leaves hope. What a larger set cannot better, no part of it can.
    private IEnumerable<HashSet<int>> Steps(HashSet<int> set, Func<double> best)
    {
        var inside = set.Order().ToList();
        foreach (var leave in inside)
        {
            HashSet<int> less = [.. inside.Where(p => p != leave)];
            if (AtBest(less) < best() - Better)
            {
                yield return less;
            }
        }

        foreach (var enter in Enumerable.Range(0, model.Products.Count).Where(p => !set.Contains(p)))
        {
            HashSet<int> more = [.. inside, enter];
            if (AtBest(more) >= best() - Better)
            {
                continue;
            }

            if (more.Count <= most)
            {
                yield return more;
            }

            foreach (var leave in inside)
            {
                HashSet<int> other = [.. more.Where(p => p != leave)];
                if (AtBest(other) < best() - Better)
                {
                    yield return other;
                }
            }
        }
    }

    private double AtBest(HashSet<int> set)
    {
        steps++;
        programme.Open(set);
        return programme.Least() ?? double.MaxValue;
    }

    // Money by the pound, then the limits of each bed, then whole packs: fewer packs as long as that is cheaper.
    private FarmSolution? Judge(HashSet<int> set)
    {
        programme.Open(set);
        if (programme.Least() is null || KeepBedLimits() is not { } needed)
        {
            return null;
        }

        var bought = Packs(needed);
        Buy(bought);
        if (programme.Least() is null)
        {
            return null;
        }

        var best = Take(bought);
        foreach (var product in set.Where(p => model.Products[p].PackPounds is not null).OrderBy(p => p))
        {
            while (bought[product] > 0)
            {
                var fewer = (double[])bought.Clone();
                fewer[product] = Math.Max(0, bought[product] - model.Products[product].PackPounds!.Value);
                Buy(fewer);
                if (programme.Least() is null || Take(fewer) is var found && found.Objective >= best.Objective - Better)
                {
                    break;
                }

                (best, bought) = (found, fewer);
            }

            Buy(bought);
        }

        return model.Limits.Budget is { } budget && Money(best) > (double)budget.Value + Dust ? null : best;
    }

    private void Buy(double[] bought)
    {
        for (var p = 0; p < bought.Length; p++)
        {
            if (model.Products[p].PackPounds is not null)
            {
                programme.Buy(p, bought[p]);
            }
        }
    }

    private double[] Packs(double[] bought)
    {
        for (var p = 0; p < bought.Length; p++)
        {
            bought[p] = bought[p] <= Dust ? 0 : model.Products[p].PackPounds is { } pack ? Math.Ceiling((bought[p] / pack) - Dust) * pack : bought[p];
        }

        return bought;
    }

    private FarmSolution Take(double[] limits)
    {
        var (rates, pounds) = (programme.Rates(), programme.Bought());
        var bought = new double[limits.Length];
        var money = 0.0;
        for (var p = 0; p < bought.Length; p++)
        {
            bought[p] = model.Products[p].PackPounds is null ? (pounds[p] <= Dust ? 0 : pounds[p]) : pounds[p] <= Dust ? 0 : limits[p];
            money += (bought[p] * model.Products[p].PricePerPound) + (bought[p] > 0 ? model.Products[p].Freight : 0);
        }

        return new FarmSolution(rates, bought, money + Labour(rates) + programme.BesideMoney(), double.NegativeInfinity, SearchEnd.Branches);
    }

    private double Labour(IReadOnlyList<double[]> rates)
    {
        var perPass = (double)(model.Limits.LabourPerPass?.Value ?? 0);
        return perPass == 0 ? 0 : perPass * rates.Select((r, g) => r.Count(x => x > 0) * model.Groups[g].Beds.Count).Sum();
    }

    private double Money(FarmSolution solution) => solution.Bought.Select((b, p) => (b * model.Products[p].PricePerPound) + (b > 0 ? model.Products[p].Freight : 0)).Sum() + Labour(solution.Rates);

    // A linear programme knows neither a count of materials nor a least rate: the smallest use is given up, or lifted, until both hold.
    // Gives what is then needed of each product: read before the bounds are moved, because the solver forgets its answer at that.
    private double[]? KeepBedLimits()
    {
        var least = model.Limits.SmallestRate?.PoundsPerAcre ?? 0;
        if (model.Limits.ProductsPerBed is null && least == 0)
        {
            return programme.Bought();
        }

        for (var round = 0; round < 40; round++)
        {
            var rates = programme.Rates();
            var changed = false;
            for (var g = 0; g < rates.Count; g++)
            {
                changed |= KeepBedLimits(g, rates[g], least);
            }

            if (!changed)
            {
                var needed = programme.Bought();
                KeepAsItIs(rates, least);
                return needed;
            }

            if (programme.Least() is null)
            {
                return null;
            }
        }

        return null;
    }

    // Whole packs move the rates; they may not bring back what was given up.
    private void KeepAsItIs(IReadOnlyList<double[]> rates, double least)
    {
        for (var g = 0; g < rates.Count; g++)
        {
            for (var i = 0; i < rates[g].Length; i++)
            {
                programme.Keep(g, i, rates[g][i] > 0 ? least : 0, rates[g][i] > 0 ? model.Groups[g].Model.Variables[i].Most.PoundsPerAcre : 0);
            }
        }
    }

    private bool KeepBedLimits(int group, double[] rates, double least)
    {
        var variables = model.Groups[group].Model.Variables;
        var materials = Enumerable.Range(0, rates.Length)
            .Where(i => rates[i] > 0)
            .GroupBy(i => variables[i].Offered.Material.Id, StringComparer.Ordinal)
            .OrderBy(m => m.Sum(i => rates[i] / Math.Max(UsefulRate.Of(model.Groups[group].Model, variables[i]), Dust)))
            .ToList();
        if (model.Limits.ProductsPerBed is { } most && materials.Count > most)
        {
            foreach (var i in Enumerable.Range(0, rates.Length).Where(i => variables[i].Offered.Material.Id == materials[0].Key))
            {
                programme.Keep(group, i, 0, 0);
            }

            return true;
        }

        var changed = false;
        for (var i = 0; i < rates.Length; i++)
        {
            if (rates[i] > 0 && rates[i] < least - Dust)
            {
                // More than half of it is worth the whole; less is left out.
                var lifted = rates[i] >= least / 2 && variables[i].Most.PoundsPerAcre >= least;
                programme.Keep(group, i, lifted ? least : 0, lifted ? variables[i].Most.PoundsPerAcre : 0);
                changed = true;
            }
        }

        return changed;
    }
}
