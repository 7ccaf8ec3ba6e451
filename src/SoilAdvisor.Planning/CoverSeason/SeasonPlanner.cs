using System.Globalization;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Planning.CoverSeason;

/// <summary>Chooses cover crops for all beds of a season together. The same gaps and wish give the same season.</summary>
public static class SeasonPlanner
{
    /// <summary>The season.</summary>
    /// <param name="gaps">Free times of the beds with what fits them; a bed with two gaps stands twice.</param>
    /// <param name="wish">What the grower asks.</param>
    /// <param name="cancel">Stops between two solves.</param>
    public static CoverCropSeason Plan(IReadOnlyList<SeasonGap> gaps, SeasonWish wish, CancellationToken cancel)
    {
        var model = new SeasonModel(gaps, wish);
        var (places, proven) = SeasonSearch.Solve(model, cancel);
        var chosen = new SeasonOption?[gaps.Count];
        foreach (var option in places.Select(p => model.Options[p]))
        {
            chosen[option.Gap] = option;
        }

        var trades = new SeasonTrades(model, chosen);
        var seed = Seed(model, chosen);
        var further = Math.Max(0, seed.Count - 1);
        return new CoverCropSeason(
            [.. gaps.Select((gap, g) => new SeasonStand(gap, chosen[g]?.Choice, trades.Of(g)))],
            seed,
            wish,
            chosen.Sum(o => (o?.Hundredths ?? 0) / 100m),
            further * wish.PointsPerSpecies,
            proven,
            proven ? "No other choice for these beds scores higher under what you asked." : "The search was ended before it was proven that nothing scores higher: a better choice may exist.",
            Costs.Sum(seed.Select(s => s.Cost)) is { } cost && seed.All(s => s.Cost is not null || s.ToBuy is null || s.ToBuy.Value.Grams == 0) ? cost : null,
            [.. Assumptions(model, chosen)]);
    }

    private static List<SeedNeed> Seed(SeasonModel model, SeasonOption?[] chosen)
    {
        var needs = new List<SeedNeed>();
        foreach (var grown in chosen.OfType<SeasonOption>().GroupBy(o => o.Species).OrderBy(g => model.Species[g.Key].Name, StringComparer.Ordinal))
        {
            var (cover, stock) = (model.Species[grown.Key], model.Stocks[grown.Key]);
            if (grown.Any(o => o.Choice.SeedPerBed is null))
            {
                needs.Add(new SeedNeed(cover, grown.Count(), null, stock.OnHand, null, null, stock.Pack, null));
                continue;
            }

            var needed = grown.Aggregate(Mass.Zero, (sum, o) => sum + o.Choice.SeedPerBed!.Value);
            var missing = Mass.FromGrams(Math.Max(0, needed.Grams - stock.OnHand.Grams));
            int? packs = stock.Pack is { } pack ? (int)Math.Ceiling((missing.Grams / pack.Grams) - 1e-9) : null;
            var buy = packs is { } count ? stock.Pack!.Value * count : missing;
            needs.Add(new SeedNeed(cover, grown.Count(), needed, stock.OnHand, buy, packs, stock.Pack, stock.PricePerKilogram is { } price ? price with { Value = decimal.Round(price.Value * (decimal)buy.Kilograms, 2) } : null));
        }

        return needs;
    }

    private static IEnumerable<Assumption> Assumptions(SeasonModel model, SeasonOption?[] chosen)
    {
        yield return new("season-points", string.Create(CultureInfo.InvariantCulture, $"Every bed counts once, whatever its size, with the points of its cover crop; a bare bed has none. Each species after the first costs {model.Wish.PointsPerSpecies:0.##} {(model.Wish.PointsPerSpecies == 1 ? "point" : "points")}. Of choices with equal points the one that needs less money for seed is taken, then less seed."), Citation.OurJudgement);
        if (model.Wish.FamilyGapMonths is null)
        {
            yield return new("no-family-gap", "You gave no family gap: a cover crop of the family of a crop beside it stays possible, with its points off and its warning. Give familyGapMonths to forbid it.", Citation.OurJudgement);
        }

        var unknown = chosen.OfType<SeasonOption>().Where(o => o.Choice.SeedPerBed is null).Select(o => o.Choice.CoverCrop.Name).Distinct().Order(StringComparer.Ordinal).ToList();
        if (unknown.Count > 0)
        {
            yield return new("season-seed-unknown", $"No seed rate in lb/acre is held for {string.Join(" and ", unknown)}: its seed is not counted.", Citation.OurJudgement);
        }
    }
}
