using System.Globalization;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.PublishedChecks;

public sealed class ConversionChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("conversions");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_soil_test_value_converts_as_printed(PublishedExample example)
    {
        var given = example.GivenAs<ReadingGiven>();
        var expected = example.ExpectedAs<PrintedNumber>();
        var reading = new Reading(
            Words.Analytes.Read(given.Analyte).Value,
            Amount.Measured(given.Value),
            Words.Units.Read(given.Unit).Value,
            Method.Extracted(Words.Extractants.Read(given.Extractant).Value),
            "published example");

        var converted = ReadingConversion.To(reading, Words.Units.Read(given.To).Value, null).Value;

        Assert.Equal(expected.Unit, given.To);
        example.AgreesWith(expected.Value, (double)converted.Amount.Number, string.Create(CultureInfo.InvariantCulture, $"factor {converted.Factor}"));
    }

    private sealed record ReadingGiven(string Analyte, decimal Value, string Unit, string Extractant, string To);
}
