using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.Working;
using SoilAdvisor.Planning;
using UnitsNet;

namespace SoilAdvisor.Api.Lime;

/// <summary>POST /v1/lime.</summary>
internal static class LimeEndpoints
{
    private const string Ground = "ground-spread";

    public static void MapLime(this IEndpointRouteBuilder routes) => routes
        .MapCalculation<LimeRequest, LimeAnswer>("/v1/lime", Answer)
        .WithTags("Lime").WithName("LimeRequirement").WithSummary("How much lime a soil needs, and which stones meet it");

    internal static LimeAnswer? Answer(LimeRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var test = request.SoilTest is { } written ? SoilTestReader.Read(written, "/soilTest", faults) : null;
        var crop = Named.Read(request.Crop, "/crop", calculation.Tables.Crop, faults);
        var method = Named.Read(request.Method, "/method", calculation.Tables.LimeMethod, faults);
        var depth = UnitWords.ReadLength(request.Depth, "/depth", faults);
        var area = UnitWords.ReadArea(request.Area, "/area", faults);
        var materials = MaterialReader.Read(request.Materials, "/materials", calculation.Tables, faults);
        if (test is null || faults.All.Any(f => !f.Pointer.StartsWith("/soilTest/readings/", StringComparison.Ordinal) && !f.Pointer.StartsWith("/materials/", StringComparison.Ordinal)))
        {
            return null;
        }

        var sheet = calculation.NewSheet();
        var requirement = Target(test, crop, request.TargetPh?.Number)
            .Then(target => LimeRequirementCalculation.For(test, target.Target, calculation.Tables.LimeMethods.Values, method, request.Region, target.Assumptions, sheet))
            .Select(r => depth is { } worked ? LimeRequirementCalculation.ForDepth(r, worked, sheet) : r);
        if (!requirement.TryGet(out var needed, out var reason))
        {
            faults.Add("/soilTest", reason);
            return null;
        }

        calculation.Assume(needed.Assumptions);
        var choices = LimeChoices.For(needed, Offered(materials, request.Materials is not null, calculation), Magnesium(test, request, crop, calculation), area, sheet);
        foreach (var choice in choices)
        {
            calculation.Assume(choice.Offered.Analysis.Assumptions);
        }

        return new LimeAnswer(
            LimeWriter.Write(needed, area, Ground, calculation),
            [.. choices.Select(c => LimeWriter.Write(c, area, Ground, calculation))],
            Warnings(request, test),
            WorkingWriter.Write(sheet?.Lines, calculation.Bibliography),
            faults.Count > 0 ? faults.All : null,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions());
    }

    private static Answer<TargetPhAnswer> Target(SoilTest test, Crop? crop, decimal? asked) =>
        TargetPhChoice.For(crop is null ? [] : [new Planting(crop, null, null, null, null, null)], test, asked);

    private static List<OfferedMaterial> Offered(IReadOnlyList<MaterialOffer> materials, bool listed, Calculation calculation)
    {
        var offers = listed ? materials : calculation.Tables.Materials.Values.Where(m => m.Category == "lime" && m.Status != OrganicStatus.Prohibited).Select(m => new MaterialOffer(m, null, null, null));
        var ready = new List<OfferedMaterial>();
        foreach (var offer in offers)
        {
            var made = MaterialAnalyses.For(offer.Material, null, offer.Tested)
                .Then(a => OfferedMaterials.For(offer.Material, a, offer.PricePerKilogram, Mass.FromKilograms(1), offer.OnHand, listed));
            if (made.TryGet(out var one, out var reason))
            {
                ready.Add(one);
            }
            else if (listed)
            {
                calculation.Faults.Add("/materials", reason);
            }
        }

        return ready;
    }

    // Magnesium decides between dolomitic and calcitic stone; without a guide that rates it the stones are given in the order of the rest.
    private static Rating? Magnesium(SoilTest test, LimeRequest request, Crop? crop, Calculation calculation)
    {
        if (test.Of(Analyte.Mg) is not { } reading)
        {
            return null;
        }

        var asked = GuideOf.Read(request.Guide, calculation);
        var guide = GuideChoice.For([test], asked, request.Region, crop is null ? [] : [crop.Id], calculation.Tables);
        if (!guide.TryGet(out var chosen, out _) || !chosen.Guide.Rate(test, reading, new RatingContext(crop?.Id, null, null)).TryGet(out var rating, out _))
        {
            return null;
        }

        calculation.Assume([new Assumption("magnesium-by-guide", $"Magnesium is {rating.Class.Name} by {chosen.Guide.Id}, which orders the stones. {chosen.Reason}", rating.Source), .. rating.Assumptions]);
        return rating;
    }

    private static List<string> Warnings(LimeRequest request, SoilTest test)
    {
        if (Dates.Read(request.RecentLime?.Date) is not { } limed)
        {
            return [];
        }

        var since = test.Sampled is { } sampled ? limed >= sampled.AddMonths(-12) : (bool?)null;
        return since switch
        {
            true => [$"Lime was spread on {Dates.Write(limed)}, so late before or after sampling that the soil test does not show all of it. Test again before liming, or take off what was spread."],
            null => [$"Lime was spread on {Dates.Write(limed)} and the day of sampling is not known: the test may not show it. Test again before liming."],
            _ => [],
        };
    }
}
