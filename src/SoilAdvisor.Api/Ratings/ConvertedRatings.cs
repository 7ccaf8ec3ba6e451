using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Planning;

namespace SoilAdvisor.Api.Ratings;

/// <summary>The conversions that a request named.</summary>
internal static class ConvertedRatings
{
    /// <summary>Each as a rating of its own; one that does not hold for this test is refused at its place.</summary>
    public static IReadOnlyList<ConvertedRatingAnswer>? Of(RatingsRequest request, Guide chosen, SoilTest test, RatingContext context, Calculation calculation)
    {
        if (request.Conversions is not { Count: > 0 } named)
        {
            return null;
        }

        var answers = new List<ConvertedRatingAnswer>();
        for (var i = 0; i < Math.Min(named.Count, Limits.Conversions); i++)
        {
            var pointer = PointerPath.Down("/conversions", i);
            if (Named.Read(named[i], pointer, calculation.Tables.MethodConversion, calculation.Faults) is not { } conversion)
            {
                continue;
            }

            var sheet = calculation.NewSheet();
            if (ConvertedRating.Of(test, conversion, chosen, context, request.Region, calculation.Tables, sheet).TryGet(out var rated, out var reason))
            {
                calculation.Assume(rated.Reading.Assumptions);
                answers.Add(new ConvertedRatingAnswer(
                    conversion.Id,
                    true,
                    RatingWriter.Write(rated.Reading.Original),
                    rated.Guide.Guide.Id,
                    rated.Guide.Reason,
                    RatingWriter.Write(rated.Rating, rated.Certainty, sheet?.Lines, calculation),
                    calculation.Assumptions(rated.Reading.Assumptions),
                    calculation.Cite(conversion.Source)));
            }
            else
            {
                calculation.Faults.Add(pointer, reason);
            }
        }

        return answers;
    }
}
