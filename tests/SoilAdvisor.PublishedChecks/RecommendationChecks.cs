using System.Globalization;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class RecommendationChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("recommendations");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_soil_test_leads_to_the_printed_rate(PublishedExample example)
    {
        var given = example.GivenAs<SoilTestGiven>();
        var expected = example.ExpectedAs<PrintedNeed>();
        var tables = TablesUnderTest.Current;
        var guide = tables.Guides[given.Guide];
        var working = new WorkingSheet();
        var reading = new Reading(
            Words.Analytes.Read(given.Analyte).Value,
            Amount.Measured(given.Value),
            Words.Units.Read(given.Unit).Value,
            Method.Extracted(Words.Extractants.Read(given.Extractant).Value),
            "published table");
        var test = new SoilTest("published", null, null, null, null, null, null, [reading], []);
        var rating = guide.Rate(test, reading, new RatingContext(null, null, given.Subregion), working).Value;
        var planting = new Planting(tables.Crop(given.Crop).Value, null, null, null, null, null);

        var need = NeedCalculation.For(test, guide, tables.RateTables, [rating], [planting], [], tables.CoverCrops, working);

        var found = need.Needs.SingleOrDefault(n => n.Nutrient == expected.Nutrient);
        if (found is null)
        {
            Assert.Fail(example.Explain("no such need: " + string.Join(" ", need.Refused.Select(r => r.Refusal.Message)), WorkingText.Of(working)));
        }

        Assert.Equal("lb/acre", expected.Unit);
        string[] lines = [.. WorkingText.Of(working), string.Create(CultureInfo.InvariantCulture, $"need: {found.Rate.Low.PoundsPerAcre} to {found.Rate.High.PoundsPerAcre} lb/acre")];
        example.AgreesWith(expected.Low, found.Rate.Low.PoundsPerAcre, lines);
        example.AgreesWith(expected.High ?? expected.Low, found.Rate.High.PoundsPerAcre, lines);
    }

    private sealed record SoilTestGiven(string Guide, string Crop, string Analyte, decimal Value, string Unit, string Extractant, string? Subregion = null);
}
