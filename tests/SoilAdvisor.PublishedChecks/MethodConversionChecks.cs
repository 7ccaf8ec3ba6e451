using SoilAdvisor.Agronomy.MethodConversions;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.PublishedChecks;

public sealed class MethodConversionChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("method-conversions");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_named_conversion_gives_the_printed_answer(PublishedExample example)
    {
        var given = example.GivenAs<ConversionGiven>();
        var conversion = TablesUnderTest.Current.MethodConversion(given.Conversion).Value;
        var reading = new Reading(conversion.Analyte, Amount.Measured(given.Value), Words.Units.Read(given.Unit).Value, conversion.From, "published example");
        var test = new SoilTest("published", null, null, null, null, false, null, [reading], []);

        var answer = MethodConversionCalculation.Convert(test, conversion, null);

        if (example.Expected.ValueKind == System.Text.Json.JsonValueKind.String)
        {
            Assert.False(answer.IsGiven, example.Explain("a number"));
            Assert.Equal(example.Expected.GetString(), answer.Reason.Code);
        }
        else
        {
            Assert.True(answer.IsGiven, answer.IsGiven ? null : example.Explain(answer.Reason.Message));
            example.AgreesWith(example.ExpectedAs<PrintedNumber>().Value, (double)answer.Value.Reading.Amount.Number);
        }
    }

    private sealed record ConversionGiven(string Conversion, decimal Value, string Unit);
}
