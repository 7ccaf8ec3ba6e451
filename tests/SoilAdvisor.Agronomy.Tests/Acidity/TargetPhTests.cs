using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public sealed class TargetPhTests
{
    private static readonly SoilTest Mineral = InventedLime.Soil(5.5m);

    [Fact]
    public void The_most_sensitive_crop_sets_the_target_and_that_is_said()
    {
        var answer = TargetPhChoice.For([Crop("bean", 6.2m), Crop("beet", 6.5m)], Mineral, null).Value;

        Assert.Equal((6.5m, "beet"), (answer.Target.Value, answer.Target.Crop));
        Assert.Equal("target-ph-highest", Assert.Single(answer.Assumptions).Code);
    }

    [Theory]
    [InlineData(5.79, 5.79, "target-ph-conflict")]
    [InlineData(5.8, 6.5, "target-ph-highest")]
    public void A_crop_that_needs_acid_soil_is_never_limed_for_another(double acid, double expected, string code)
    {
        var answer = TargetPhChoice.For([Crop("beet", 6.5m), Crop("potato", (decimal)acid)], Mineral, null).Value;

        Assert.Equal((decimal)expected, answer.Target.Value);
        Assert.Equal(code, Assert.Single(answer.Assumptions).Code);
    }

    [Fact]
    public void One_crop_with_one_printed_target_leaves_nothing_to_assume() =>
        Assert.Empty(TargetPhChoice.For([Crop("beet", 6.5m), Crop("beet", 6.5m)], Mineral, null).Value.Assumptions);

    [Fact]
    public void Two_crops_that_need_acid_soil_are_no_conflict()
    {
        var answer = TargetPhChoice.For([Crop("blueberry", 4.8m), Crop("potato", 5.2m)], Mineral, null).Value;

        Assert.Equal(4.8m, answer.Target.Value);
        Assert.DoesNotContain(answer.Assumptions, a => a.Code == "target-ph-conflict");
    }

    [Fact]
    public void Of_a_printed_range_the_low_end_is_the_target_and_that_is_said()
    {
        var answer = TargetPhChoice.For([Crop("basil", null, 6.2m)], Mineral, null).Value;

        Assert.Equal(6.2m, answer.Target.Value);
        Assert.Equal("target-ph-low-end", Assert.Single(answer.Assumptions).Code);
    }

    [Fact]
    public void The_ph_below_which_the_source_limes_comes_along() =>
        Assert.Equal(6.0m, TargetPhChoice.For([Crop("beet", 6.5m, limeBelow: 6.0m)], Mineral, null).Value.Target.LimeBelow);

    [Fact]
    public void An_organic_soil_is_refused_unless_the_target_is_named()
    {
        var organic = Mineral with { SoilGroup = SoilGroup.Organic };

        Assert.Equal("organic-soil-target", TargetPhChoice.For([Crop("beet", 6.5m)], organic, null).Reason.Code);
        Assert.Equal(5.4m, TargetPhChoice.For([Crop("beet", 6.5m)], organic, 5.4m).Value.Target.Value);
    }

    [Fact]
    public void Crops_without_a_target_are_refused() => Assert.Equal("no-target-ph", TargetPhChoice.For([Crop("oca", null)], Mineral, null).Reason.Code);

    [Theory]
    [InlineData(3.9, false)]
    [InlineData(4.0, true)]
    [InlineData(7.5, true)]
    [InlineData(7.6, false)]
    public void A_target_that_no_crop_wants_is_refused(double asked, bool given) =>
        Assert.Equal(given, TargetPhChoice.For([Crop("beet", 6.5m)], Mineral, (decimal)asked).IsGiven);

    [Fact]
    public void Where_crops_disagree_each_is_named_with_what_it_wants_and_what_to_do()
    {
        var said = Assert.Single(TargetPhChoice.For([Crop("beet", 6.5m), Crop("potato", 5.2m), Crop("bean", 6.2m)], Mineral, null).Value.Assumptions).Text;

        Assert.All(["beet pH 6.5", "potato pH 5.2", "bean pH 6.2", "another bed", "grow potato first"], words => Assert.Contains(words, said, StringComparison.Ordinal));
    }

    [Fact]
    public void The_regions_own_target_goes_before_the_crops_figure()
    {
        var answer = TargetPhChoice.For([Crop("beet", 6.5m)], Mineral, null, [Row("beet", new PublishedPh.Target(6.2m))], "XX-A").Value;

        Assert.Equal(6.2m, answer.Target.Value);
        Assert.Equal("target-ph-region", Assert.Single(answer.Assumptions).Code);
        Assert.Equal(6.5m, TargetPhChoice.For([Crop("beet", 6.5m)], Mineral, null, [Row("beet", new PublishedPh.Target(6.2m))], "XX-B").Value.Target.Value);
    }

    [Fact]
    public void A_row_for_the_crop_goes_before_one_for_all_others()
    {
        TargetPhRow[] rows = [Row("", new PublishedPh.Target(6.2m)), Row("potato", new PublishedPh.Target(5.2m))];

        Assert.Equal(5.2m, TargetPhChoice.For([Crop("potato", 5.8m)], Mineral, null, rows, "XX-A").Value.Target.Value);
        Assert.Equal(6.2m, TargetPhChoice.For([Crop("beet", 6.5m)], Mineral, null, rows, "XX-A").Value.Target.Value);
    }

    [Fact]
    public void A_floor_is_never_aimed_at()
    {
        var answer = TargetPhChoice.For([Crop("beet", 6.5m)], Mineral, null, [Row("beet", new PublishedPh.Floor(6.3m))], "XX-A").Value;

        Assert.Equal((6.5m, 6.3m), (answer.Target.Value, answer.Target.LimeBelow));
        Assert.Equal("target-ph-floor", Assert.Single(answer.Assumptions).Code);
    }

    [Fact]
    public void Of_an_optimum_the_low_end_and_of_an_optimum_with_a_target_the_target_is_aimed_at()
    {
        Assert.Equal(6.0m, TargetPhChoice.For([Crop("beet", 6.5m)], Mineral, null, [Row("beet", new PublishedPh.Optimum(6.0m, 6.8m))], "XX-A").Value.Target.Value);
        Assert.Equal(6.7m, TargetPhChoice.For([Crop("beet", 6.5m)], Mineral, null, [Row("beet", new PublishedPh.OptimumAndTarget(6.5m, 6.7m))], "XX-A").Value.Target.Value);
    }

    [Fact]
    public void A_recalled_row_of_the_region_gives_way_to_the_crops_figure()
    {
        var recalled = Row("beet", new PublishedPh.Target(6.0m)) with { Source = new Citation("invented", null, Evidence.FromMemory) };

        Assert.Equal(6.5m, TargetPhChoice.For([Crop("beet", 6.5m)], Mineral, null, [recalled], "XX-A").Value.Target.Value);
    }

    [Fact]
    public void An_organic_soil_takes_a_target_of_its_own_only()
    {
        var organic = Mineral with { SoilGroup = SoilGroup.Organic };
        TargetPhRow[] rows = [Row("beet", new PublishedPh.Target(6.2m)), Row("", new PublishedPh.Target(5.6m)) with { Soil = LimeSoil.Organic }];

        Assert.Equal(5.6m, TargetPhChoice.For([Crop("beet", 6.5m)], organic, null, rows, "XX-A").Value.Target.Value);
        Assert.Equal("organic-soil-target", TargetPhChoice.For([Crop("beet", 6.5m)], organic, null, rows, "XX-B").Reason.Code);
    }

    private static TargetPhRow Row(string crop, PublishedPh ph) =>
        new("group", crop.Length == 0 ? [] : [crop], crop.Length == 0, "mineral", LimeSoil.Mineral, ph, "Region A", ["XX-A"], new Citation("invented", null, Evidence.Seen));

    private static Planting Crop(string id, decimal? target, decimal? low = null, decimal? limeBelow = null)
    {
        var values = new List<CropValue>();
        if ((target ?? low) is not null)
        {
            values.Add(new CropValue("target-ph", target, low, low is null ? null : low + 0.3m, "pH", Citation.OurJudgement, null));
        }

        if (limeBelow is not null)
        {
            values.Add(new CropValue("lime-below-ph", limeBelow, null, null, "pH", Citation.OurJudgement, null));
        }

        return new Planting(new Crop(id, id, null, "Family", "root", SoilContact.Contact, null, false, values, [], Citation.OurJudgement), null, null, null, null, null);
    }
}
