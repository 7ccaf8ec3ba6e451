using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>POST /v1/cover-crops and /v1/cover-crops/nitrogen.</summary>
internal static class CoverCropEndpoints
{
    public static void MapCoverCrops(this IEndpointRouteBuilder routes)
    {
        routes.MapCalculation<CoverCropsRequest, CoverCropsAnswer>("/v1/cover-crops", Choose)
            .WithTags("Cover crops").WithName("ChooseCoverCrops").WithSummary("Which cover crops fit a free time, and why");
        routes.MapCalculation<NitrogenRequest, NitrogenAnswer>("/v1/cover-crops/nitrogen", CoverCropNitrogenAnswers.Answer)
            .WithTags("Cover crops").WithName("CoverCropNitrogen").WithSummary("Nitrogen that a cut and weighed cover crop gives the next crop");
    }

    private static CoverCropsAnswer? Choose(CoverCropsRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var last = Named.Read(request.LastCrop, "/lastCrop", calculation.Tables.Crop, faults);
        var next = Named.Read(request.NextCrop, "/nextCrop", calculation.Tables.Crop, faults);
        var area = UnitWords.ReadArea(request.Area, "/area", faults);
        var test = request.SoilTest is { } written ? SoilTestReader.Read(written, "/soilTest", faults) : null;
        var problems = request.Problems ?? [];
        var known = calculation.Tables.CoverCropTables.Hosts.Select(h => h.Problem).Distinct().Order(StringComparer.Ordinal).ToList();
        for (var i = 0; i < problems.Count; i++)
        {
            if (!known.Contains(problems[i]))
            {
                faults.Add(PointerPath.Down("/problems", i), "unknown-problem", $"Nothing is held on \"{Rules.Clip(problems[i])}\".", $"Use: {string.Join(", ", known)}.");
            }
        }

        if (BedReader.ReadGap(request.Window) is not { } gap || faults.All.Any(f => !f.Pointer.StartsWith("/soilTest", StringComparison.Ordinal)))
        {
            return null;
        }

        var selection = CoverCropChoices.For(
            new CoverCropQuestion(gap)
            {
                Aims = request.Aims ?? [],
                Weights = CoverCropWeightsReader.Read(request.Weights),
                Climate = ClimateReader.Read(request.Climate, request.Frost, request.Region),
                LastCrop = last,
                NextCrop = next,
                Area = area,
                PhosphorusShort = IsShort(test, request, next, calculation),
                Problems = problems,
                Irrigated = request.Irrigated,
                TerminationZone = (int?)request.TerminationZone?.Number,
            },
            calculation.Tables.CoverCropTables);
        calculation.Assume(selection.Assumptions);
        var answer = CoverCropWriter.Write(selection, calculation)!;
        return new CoverCropsAnswer(
            answer.Gap,
            answer.Aims,
            answer.Weights,
            answer.DegreeDays,
            answer.Termination,
            answer.Choices,
            answer.Excluded,
            faults.Count > 0 ? faults.All : null,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions(),
            answer.By);
    }

    private static bool IsShort(SoilTest? test, CoverCropsRequest request, Crop? next, Calculation calculation)
    {
        if (test?.Of(Analyte.P) is not { } reading || GuideOf.Choose([test], request.Guide, request.Region, next is null ? [] : [next.Id], calculation) is not { } chosen)
        {
            return false;
        }

        if (chosen.Guide.Rate(test, reading, new RatingContext(next?.Id, null, null)).TryGet(out var rating, out var reason))
        {
            calculation.Assume(rating.Assumptions);
            return rating.Standing == Standing.Below;
        }

        calculation.Faults.Add(reading.Where, GuideCoverage.Offer(reason, reading, calculation.Tables));
        return false;
    }
}
