using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Cations;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Ratings;

/// <summary>POST /v1/ratings.</summary>
internal static class RatingsEndpoints
{
    public static void MapRatings(this IEndpointRouteBuilder routes) => routes
        .MapCalculation<RatingsRequest, RatingsAnswer>("/v1/ratings", Rate)
        .WithTags("Ratings").WithName("RateSoilTest").WithSummary("Rate a soil test against a published guide");

    internal static RatingsAnswer? Rate(RatingsRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var test = request.SoilTest is { } written ? SoilTestReader.Read(written, "/soilTest", faults) : null;
        var crop = Named.Read(request.Crop, "/crop", calculation.Tables.Crop, faults);
        if (test is null || GuideOf.Choose([test], request.Guide, request.Region, crop is null ? [] : [crop.Id], calculation) is not { } chosen)
        {
            return null;
        }

        var context = new RatingContext(crop?.Id, null, request.Subregion);
        var ratings = new List<RatingAnswer>();
        foreach (var reading in test.Readings)
        {
            var sheet = calculation.NewSheet();
            if (chosen.Guide.Rate(test, reading, context, sheet).TryGet(out var rating, out var reason))
            {
                var certainty = RatingCertainties.Of(rating, test, calculation.Tables.Variability, sheet);
                calculation.Assume(RatingWriter.Assumptions(rating, certainty));
                ratings.Add(RatingWriter.Write(rating, certainty, sheet?.Lines, calculation));
            }
            else
            {
                faults.Add(reading.Where, GuideCoverage.Offer(reason, reading, calculation.Tables));
            }
        }

        var nitrate = NitrateTestWriter.Of(test, crop, request, calculation);
        if (ratings.Count == 0 && nitrate is null)
        {
            return null;
        }

        var (beside, agreement) = request.Beside is { Count: > 0 } asked ? GuidesBeside.Read(asked, chosen, test, context, calculation) : default;
        return new RatingsAnswer(
            GuideNamed.Of(chosen.Guide, calculation),
            chosen.Reason,
            chosen.Others,
            SuspicionWriter.Of(test, calculation),
            ratings,
            Indices(chosen.Guide, test, context, calculation),
            chosen.Guide.CeilingsFor(test) is { Count: > 0 } ceilings ? [.. ceilings.Select(c => IndexWriter.Write(c, calculation))] : null,
            nitrate,
            ConvertedRatings.Of(request, chosen.Guide, test, context, calculation),
            Cations(test, calculation),
            beside,
            agreement,
            faults.Count > 0 ? faults.All : null,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions());
    }

    private static IReadOnlyList<IndexAnswer>? Indices(Guide guide, SoilTest test, RatingContext context, Calculation calculation)
    {
        var sheet = calculation.NewSheet();
        var answers = guide.RateIndices(test, context, sheet);
        return answers.Count > 0 ? [.. answers.Select(a => IndexWriter.Write(a.Index, a.Answer, test.Of(a.Index.About)!.Where, sheet?.Lines, calculation))] : null;
    }

    private static CationsAnswer? Cations(SoilTest test, Calculation calculation)
    {
        if (!CationCalculation.IsMeantFor(test))
        {
            return null;
        }

        var sheet = calculation.NewSheet();
        return CationsWriter.Write(CationCalculation.For(test, calculation.Tables.Cations, null, sheet), "/soilTest", sheet?.Lines, calculation);
    }
}
