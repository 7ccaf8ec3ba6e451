using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.PublishedChecks.Laws;

/// <summary>A million random results over all guides of the tables: nothing throws, every rating has a source, every refusal says what to do, and no scale turns back.</summary>
public sealed class RatingFuzz
{
    private const int Results = 1_000_000;
    private const int Seed = 20261125;

    [Fact]
    public void A_million_random_results_are_rated_with_a_source_in_rising_classes_or_refused_with_words()
    {
        var tables = TablesUnderTest.Current;
        var guides = tables.Guides.Values.Where(g => g.Scales.Count > 0).ToList();
        var random = new RandomResults(Seed);
        var seen = new Dictionary<(RatingScale Scale, decimal? Cec), SortedDictionary<decimal, int>>();
        var (rated, refused) = (0, 0);
        for (var i = 0; i < Results; i++)
        {
            var guide = guides[i % guides.Count];
            var (test, context) = random.For(guide);
            var answer = guide.Rate(test, test.Readings[0], context);
            if (!answer.TryGet(out var rating, out var reason))
            {
                refused++;
                Assert.True(reason.Code.Length > 0 && reason.Message.Length > 0 && reason.Suggestion.Length > 0);
                continue;
            }

            rated++;
            Assert.True(tables.Sources.ContainsKey(rating.Source.SourceId), $"{guide.Id}: {rating.Class.Name} has no source.");
            if (rating.Amount.Kind == AmountKind.Measured)
            {
                Remember(seen, rating);
            }
        }

        Assert.True(rated > Results / 2, $"Only {rated} of {Results} were rated; {refused} were refused.");
        foreach (var ((scale, _), classes) in seen)
        {
            Assert.True(
                classes.Values.Zip(classes.Values.Skip(1)).All(p => p.First <= p.Second),
                $"{scale.Analyte} {scale.CropGroup} {scale.Subregion} {scale.Unit}: a higher value has a lower class.");
        }
    }

    private static void Remember(Dictionary<(RatingScale Scale, decimal? Cec), SortedDictionary<decimal, int>> seen, Rating rating)
    {
        var key = (rating.Scale, rating.Cec);
        if (!seen.TryGetValue(key, out var classes))
        {
            seen.Add(key, classes = []);
        }

        Assert.True(
            classes.TryAdd(rating.Amount.Number, rating.ClassIndex) || classes[rating.Amount.Number] == rating.ClassIndex,
            $"{rating.Guide}: {rating.Amount.Number} {rating.Scale.Unit} was rated in two classes.");
    }
}
