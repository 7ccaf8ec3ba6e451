using System.Globalization;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class RatingChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("ratings");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_value_inside_a_printed_class_is_rated_in_that_class(PublishedExample example)
    {
        var given = example.GivenAs<RatingGiven>();
        var expected = example.ExpectedAs<PrintedClass>();
        var guide = TablesUnderTest.Current.Guides[given.Guide];
        Assert.NotEmpty(given.Values);

        foreach (var value in given.Values)
        {
            var working = new WorkingSheet();
            var (test, reading) = given.Test(value);

            var answer = guide.Rate(test, reading, given.Context(), working);

            var got = answer.IsGiven ? answer.Value.Class.Name : $"refused: {answer.Reason.Message}";
            Assert.True(got == expected.Class, example.Explain(string.Create(CultureInfo.InvariantCulture, $"{value} → {got}"), WorkingText.Of(working)));
            Assert.True(answer.Value.Source.Evidence == Evidence.Seen, example.Explain($"{got}, but the table calls this class {answer.Value.Source.Evidence}"));
        }
    }

    private sealed record PrintedClass(string Class);

    private sealed record RatingGiven(
        string Guide,
        string Analyte,
        decimal[] Values,
        string Unit,
        string? Extractant = null,
        string? Detection = null,
        string? Method = null,
        string? CropGroup = null,
        string? Texture = null,
        string? Subregion = null,
        decimal? Cec = null)
    {
        public (SoilTest Test, Reading Reading) Test(decimal value)
        {
            var analyte = Words.Analytes.Read(Analyte).Value;
            Detection? detection = Detection is null ? null : Words.Detections.Read(Detection).Value;
            Procedure? procedure = Method is null ? null : Words.ProceduresOf(analyte)!.Read(Method).Value;
            var method = Extractant is null ? Agronomy.SoilTests.Method.By(procedure) : Agronomy.SoilTests.Method.Extracted(Words.Extractants.Read(Extractant).Value, detection);
            Reading[] others = Cec is { } cec ? [new Reading(Agronomy.SoilTests.Analyte.CationExchangeCapacity, Amount.Measured(cec), ReportingUnit.MilliequivalentsPer100Grams, Agronomy.SoilTests.Method.By(null), "published table")] : [];
            var reading = new Reading(analyte, Amount.Measured(value), Words.Units.Read(Unit).Value, method, "published table");
            return (new SoilTest("published", null, null, null, null, null, null, [reading, .. others], []), reading);
        }

        public RatingContext Context() => new(CropGroup, Texture is null ? null : Words.SoilGroups.Read(Texture).Value, Subregion);
    }
}
