using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.Tests.Farms;

public class GuideChoiceTests
{
    [Fact]
    public void A_guide_that_was_named_is_taken()
    {
        var named = Farm.Tables.Guide("new-jersey-vegetables").Value;
        var chosen = GuideChoice.For([Farm.Test(14, 60)], named, "US-DE", ["spinach"], Farm.Tables).Value;
        Assert.Same(named, chosen.Guide);
        Assert.Contains("delaware-vegetables", chosen.Others);
        Assert.DoesNotContain("new-jersey-vegetables", chosen.Others);
    }

    [Fact]
    public void A_named_guide_that_does_not_cover_the_extractant_is_refused_with_those_that_do()
    {
        var refused = GuideChoice.For([Farm.Test(14, 60)], Farm.Tables.Guide("uk-olsen-index").Value, null, ["spinach"], Farm.Tables).Reason;
        Assert.Equal("guide-does-not-cover", refused.Code);
        Assert.Contains("mehlich-3", refused.Message);
        Assert.Contains("delaware-vegetables", refused.Suggestion);
    }

    [Fact]
    public void A_named_guide_that_covers_the_extractant_is_taken_although_it_asks_for_the_part_of_its_region()
    {
        var georgia = Farm.Tables.Guide("georgia-vegetables").Value;
        Assert.Same(georgia, GuideChoice.For([Farm.Test(14, 60, extractant: Extractant.Mehlich1)], georgia, "US-GA", ["cabbage"], Farm.Tables).Value.Guide);
    }

    [Theory]
    [InlineData("US-DE", "delaware-vegetables")]
    [InlineData("US-NJ", "new-jersey-vegetables")]
    [InlineData("us-nj", "new-jersey-vegetables")]
    public void The_region_decides_between_guides_of_one_extractant(string region, string guide) =>
        Assert.Equal(guide, GuideChoice.For([Farm.Test(14, 60)], null, region, ["spinach"], Farm.Tables).Value.Guide.Id);

    [Fact]
    public void A_guide_whose_rates_are_for_the_region_goes_before_one_calibrated_on_field_crops()
    {
        // Pennsylvania's own limits were calibrated on field crops; the Mid-Atlantic rates are for Pennsylvania too and are read with Delaware's.
        Assert.Equal("delaware-vegetables", GuideChoice.For([Farm.Test(14, 60)], null, "US-PA", ["spinach"], Farm.Tables).Value.Guide.Id);
    }

    [Theory]
    [InlineData(Extractant.Olsen)]
    [InlineData(Extractant.Mehlich1)]
    [InlineData(Extractant.BrayP1)]
    public void Every_guide_that_is_chosen_rates_the_phosphorus_of_the_test(Extractant extractant)
    {
        var test = Farm.Test(14, 60, extractant: extractant);
        var chosen = GuideChoice.For([test], null, null, ["tomato"], Farm.Tables).Value;
        Assert.Contains(test.Readings.Take(2), r => chosen.Guide.Rate(test, r, new Agronomy.Ratings.RatingContext("tomato", null, null)).IsGiven);
    }

    [Fact]
    public void The_reason_and_the_others_are_said()
    {
        var chosen = GuideChoice.For([Farm.Test(14, 60)], null, "US-DE", ["spinach"], Farm.Tables).Value;
        Assert.StartsWith($"No guide was named. {chosen.Guide.Id} was taken because it rates 2 readings of phosphorus and potassium in 1 soil test", chosen.Reason);
        Assert.Contains("region", chosen.Reason);
        Assert.NotEmpty(chosen.Others);
    }

    [Fact]
    public void Without_a_guide_for_the_method_the_refusal_names_what_is_held()
    {
        var test = Farm.Test(14, 60);
        var odd = test with { Readings = [test.Readings[0] with { Method = Method.Extracted(Extractant.HotWater, Detection.Icp) }] };
        var refused = GuideChoice.For([odd], null, null, ["spinach"], Farm.Tables).Reason;
        Assert.Equal("no-guide-covers", refused.Code);
        Assert.Contains("hot-water (icp)", refused.Message);
        Assert.Contains("delaware-vegetables", refused.Suggestion);
    }

    [Fact]
    public void A_test_without_phosphorus_and_potassium_finds_no_guide()
    {
        var test = Farm.Test(14, 60);
        Assert.Contains("the soil tests hold neither", GuideChoice.For([test with { Readings = [test.Readings[3]] }], null, null, ["spinach"], Farm.Tables).Reason.Message);
    }

    [Fact]
    public void The_runner_up_is_named_with_why_it_lost()
    {
        var chosen = GuideChoice.For([Farm.Test(14, 60)], null, "US-DE", ["spinach"], Farm.Tables).Value;
        Assert.Contains($" {chosen.Others[0]} came next: ", chosen.Reason);
    }

    [Theory]
    [InlineData("spinach", true)]
    [InlineData("wheat", false)]
    public void Field_crop_limits_are_an_assumption_for_vegetables(string crop, bool said)
    {
        var pennsylvania = Farm.Tables.Guide("pennsylvania").Value;
        Assert.Equal("field-crops", pennsylvania.CalibratedOn);
        var chosen = GuideChoice.For([Farm.Test(14, 60)], pennsylvania, "US-PA", [crop], Farm.Tables).Value;
        Assert.Equal(said, chosen.Assumptions.Any(a => a.Code == "field-crop-limits"));
    }

    [Fact]
    public void A_guide_for_vegetables_needs_no_such_assumption() =>
        Assert.Empty(GuideChoice.For([Farm.Test(14, 60)], null, "US-DE", ["spinach"], Farm.Tables).Value.Assumptions);

    [Fact]
    public void Olsen_guides_are_offered_with_the_region_first()
    {
        var offered = GuideChoice.OlsenGuides("CA-ON", Farm.Tables);
        Assert.All(offered, id => Assert.Contains(Farm.Tables.Guides[id].Scales, s => s is { Analyte: Analyte.P, Method.Extractant: Extractant.Olsen }));
        Assert.Contains("CA-ON", Farm.Tables.Guides[offered[0]].Regions);
        Assert.Contains("california-vegetables", offered);
        Assert.DoesNotContain("delaware-vegetables", offered);
    }

    // Two guides that differ in nothing but how their limits came to us, and one that is recalled but covers more: evidence only breaks a tie.
    [Theory]
    [InlineData(false, "seen")]
    [InlineData(true, "recalled")]
    public void Evidence_only_breaks_a_tie(bool recalledCoversMore, string expected)
    {
        var test = Farm.Test(14, 60);
        var main = new[] { Everything(Analyte.P), Everything(Analyte.K) };
        var recalled = Invented("recalled", Evidence.FromMemory, recalledCoversMore ? [.. main, Everything(Analyte.Mg)] : main);
        var magnesium = new Reading(Analyte.Mg, Amount.Measured(90), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3, Detection.Icp), "x");
        var tests = new[] { test with { Readings = [.. test.Readings.Where(r => r.Analyte != Analyte.Mg), magnesium] } };

        var fits = new[] { recalled, Invented("seen", Evidence.Seen, main) }.Select(g => GuideFit.Of(g, tests, null, ["spinach"], Farm.Tables)).Order().ToList();

        Assert.Equal(expected, fits[0].Guide.Id);
        Assert.Contains(recalledCoversMore ? "it rates fewer of the other readings" : "its limits are from memory", fits[0].Why(1, fits[1]), StringComparison.Ordinal);
    }

    private static Agronomy.Ratings.Guide Invented(string id, Evidence evidence, IReadOnlyList<Agronomy.Ratings.RatingScale> scales) =>
        new(id, "Invented guide", "Nobody", ["XX-YY"], "vegetables", "vegetables", new Citation("invented", null, evidence), null, scales);

    private static Agronomy.Ratings.RatingScale Everything(Analyte analyte) => new(
        analyte, new Agronomy.Ratings.ScaleMethod(Extractant.Mehlich3, Agronomy.Ratings.ScaleDetection.Any, null), ReportingUnit.MilligramsPerKilogram, null,
        [new Agronomy.Ratings.RatingClass("Any", Agronomy.Ratings.Standing.Target, true, null, false, null, false, 0, 0, new Citation("invented", null, Evidence.Ours))]);
}
