using SoilAdvisor.Agronomy.CoverCrops.Seasons;

namespace SoilAdvisor.Planning.Tests.CoverSeason;

/// <summary>What every season keeps, counted straight from its words and not through the model that the solver sees.</summary>
internal static class SeasonLaws
{
    public static void Hold(CoverCropSeason season)
    {
        var (wish, stands) = (season.Wish, season.Stands.Where(s => s.Choice is not null).ToList());
        Assert.True(stands.Select(s => s.Choice!.CoverCrop.Id).Distinct().Count() <= (wish.MostSpecies ?? int.MaxValue));
        Assert.Equal(stands.Sum(s => (decimal)s.Choice!.Score), season.Points);
        Assert.All(stands, s => Assert.Contains(s.Choice, s.Gap.Selection.Choices));
        Assert.All(stands, s => Assert.True(s.Tasks.Select(t => t.Day).SequenceEqual(s.Tasks.Select(t => t.Day).Order())));
        foreach (var seed in season.Seed)
        {
            var stock = wish.Of(seed.CoverCrop.Id);
            var needed = stands.Where(s => s.Choice!.CoverCrop.Id == seed.CoverCrop.Id).Sum(s => s.Seed!.Value.Grams);
            Assert.Equal(needed, seed.Needed!.Value.Grams, 1e-6);
            Assert.True(needed <= stock.OnHand.Grams + seed.ToBuy!.Value.Grams + 1e-6);
            Assert.True(stock.CanBuy || seed.ToBuy.Value.Grams == 0);
            Assert.True(stock.Pack is not { } pack || Math.Abs(seed.ToBuy.Value.Grams - (pack.Grams * seed.Packs!.Value)) < 1e-6);
        }

        if (wish.FamilyGapMonths is { } months)
        {
            foreach (var stand in stands)
            {
                Assert.DoesNotContain(stand.Gap.Crops, c => c.Family == stand.Choice!.CoverCrop.Family && !Apart(stand, c.From, c.To, months));
                Assert.DoesNotContain(stands, o => !ReferenceEquals(o, stand) && o.Gap.Bed == stand.Gap.Bed && o.Choice!.CoverCrop.Family == stand.Choice!.CoverCrop.Family && !Apart(stand, o.Choice.Window.Sow, o.Choice.Window.KillBy, months));
            }
        }
    }

    private static bool Apart(SeasonStand stand, DateOnly from, DateOnly to, int months) =>
        stand.Choice!.Window.Sow >= to.AddMonths(months) || from >= stand.Choice.Window.KillBy.AddMonths(months);
}
