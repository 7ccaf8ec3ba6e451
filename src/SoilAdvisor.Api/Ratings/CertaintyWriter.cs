using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Ratings;

/// <summary>Writes out how sure a rating is.</summary>
internal static class CertaintyWriter
{
    private const int ProbabilityDigits = 3;
    private const int RangeDigits = 3;

    /// <summary>In words; where no spread is published, why not.</summary>
    public static string? Words(Answer<RatingCertainty>? certainty) =>
        certainty is not { } known ? null : known.TryGet(out var given, out var reason) ? given.Words : reason.Message;

    public static IReadOnlyList<ClassProbabilityAnswer>? Probabilities(Answer<RatingCertainty>? certainty) =>
        certainty is { IsGiven: true } known ? [.. known.Value.Classes.Select(Write)] : null;

    public static LikelyAnswer? Likely(Rating rating, Answer<RatingCertainty>? certainty) =>
        certainty is { IsGiven: true } known && LikelyRange.Of(rating, known.Value.Spread) is { } range
            ? new LikelyAnswer(
                Units.Rounded(range.Low, RangeDigits),
                Units.Rounded(range.High, RangeDigits),
                Agronomy.SoilTests.Words.Units.IdOf(rating.Scale.Unit),
                (decimal)LikelyRange.Share.Fraction)
            : null;

    private static ClassProbabilityAnswer Write(ClassProbability found) => new(
        found.Class,
        RatingWriter.WordOf(found.Standing),
        found.Probability is { } probability ? Rounded(probability) : null,
        found.Probability is null ? Rounded(found.AtLeast) : null,
        found.Probability is null ? Rounded(found.AtMost) : null);

    // To a thousandth: no published spread carries a finer one.
    private static decimal Rounded(Probability probability) => decimal.Round((decimal)probability.Fraction, ProbabilityDigits, MidpointRounding.AwayFromZero);
}
