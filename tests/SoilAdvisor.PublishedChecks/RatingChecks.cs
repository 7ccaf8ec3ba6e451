using System.Globalization;
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

    private sealed record RatingGiven : PrintedReading
    {
        public required string Guide { get; init; }

        public required decimal[] Values { get; init; }
    }
}
