using Google.OrTools.LinearSolver;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;

namespace SoilAdvisor.Planning.Tests.CoverSeason;

/// <summary>
/// The same question in another form for another solver: for each set of species (all of them are walked through) the beds are assigned by
/// a mixed-integer programme that knows no variable for species.
/// </summary>
internal static class SecondSeasonSolver
{
    /// <summary>Most points less those for further species, where no seed is limited and no family gap asked.</summary>
    public static double Best(IReadOnlyList<SeasonGap> gaps, SeasonWish wish)
    {
        var species = gaps.SelectMany(g => g.Selection.Choices).Select(c => c.CoverCrop.Id).Distinct().Order(StringComparer.Ordinal).ToList();
        var best = 0.0;
        for (var set = 1; set < 1 << species.Count; set++)
        {
            var allowed = species.Where((_, i) => (set & (1 << i)) != 0).ToHashSet();
            if (allowed.Count <= (wish.MostSpecies ?? int.MaxValue))
            {
                best = Math.Max(best, Assigned(gaps, wish, allowed) - ((double)wish.PointsPerSpecies * (allowed.Count - 1)));
            }
        }

        return best;
    }

    private static double Assigned(IReadOnlyList<SeasonGap> gaps, SeasonWish wish, HashSet<string> allowed)
    {
        using var solver = Solver.CreateSolver("SCIP")!;
        var objective = solver.Objective();
        objective.SetMaximization();
        var seed = allowed.Where(a => !wish.Of(a).CanBuy).ToDictionary(a => a, a => solver.MakeConstraint(0, wish.Of(a).OnHand.Grams, a));
        foreach (var (gap, g) in gaps.Select((gap, g) => (gap, g)))
        {
            var one = solver.MakeConstraint(0, 1, $"g{g}");
            foreach (var choice in gap.Selection.Choices.Where(c => allowed.Contains(c.CoverCrop.Id)))
            {
                var x = solver.MakeBoolVar($"{g}-{choice.CoverCrop.Id}");
                one.SetCoefficient(x, 1);
                objective.SetCoefficient(x, choice.Score);
                if (seed.TryGetValue(choice.CoverCrop.Id, out var limited))
                {
                    limited.SetCoefficient(x, choice.SeedPerBed?.Grams ?? 0);
                }
            }
        }

        Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
        return objective.Value();
    }
}
