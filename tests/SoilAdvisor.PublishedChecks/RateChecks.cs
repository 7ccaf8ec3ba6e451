using System.Globalization;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class RateChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("rates");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_printed_rate_stands_in_the_rate_table(PublishedExample example)
    {
        var given = example.GivenAs<RateGiven>();
        var expected = example.ExpectedAs<PrintedRange>();
        var crop = TablesUnderTest.Current.Crop(given.Crop).Value.Id;

        var row = TablesUnderTest.Current.RateTables[given.RateTable].Rates.FirstOrDefault(r =>
            r.Crop == crop && r.Nutrient == given.Nutrient && r.Class == given.Class && (given.Condition is null || r.Condition == given.Condition));

        if (row is null)
        {
            Assert.Fail(example.Explain("no such row"));
        }

        Assert.True(row.Source.Evidence == Evidence.Seen, example.Explain($"the table calls this rate {row.Source.Evidence}"));
        var (low, high) = expected.Unit switch
        {
            "lb/acre" => (row.Rate.Low.PoundsPerAcre, row.Rate.High.PoundsPerAcre),
            "kg/ha" => (row.Rate.Low.KilogramsPerHectare, row.Rate.High.KilogramsPerHectare),
            "lb/1000-sq-ft" => (row.Rate.Low.PoundsPer1000SquareFeet, row.Rate.High.PoundsPer1000SquareFeet),
            _ => throw new InvalidOperationException($"{example}: unit {expected.Unit}."),
        };
        var line = string.Create(CultureInfo.InvariantCulture, $"row: {low} to {high} {expected.Unit}");
        example.AgreesWith(expected.Low, low, line);
        example.AgreesWith(expected.High ?? expected.Low, high, line);
    }

    private sealed record RateGiven(string RateTable, string Crop, PlantNutrient Nutrient, string Class, string? Condition = null);
}
