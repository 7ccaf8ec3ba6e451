using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Checks;

/// <summary>POST /v1/checks: materials, raw manure and micronutrients of one bed against the organic rules.</summary>
internal static class CheckEndpoints
{
    public static void MapChecks(this IEndpointRouteBuilder routes) => routes
        .MapCalculation<CheckRequest, CheckAnswer>("/v1/checks", Check)
        .WithTags("Checks").WithName("CheckBed").WithSummary("Hold a bed's records and materials against the organic rules");

    private static CheckAnswer? Check(CheckRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var standard = Standard(request.Standard, calculation);
        var test = request.SoilTest is { } written ? SoilTestReader.Read(written, "/soilTest", faults) : new SoilTest("none", null, null, null, null, null, null, [], []);
        var bed = request.Bed is { } given ? BedReader.Read(given, test, null, "/bed", calculation.Tables, faults) : null;
        var materials = MaterialReader.Read(request.Materials, "/materials", calculation.Tables, faults);
        if (standard is null || (bed is null && materials.Count == 0) || faults.All.Any(f => f.Pointer is "/date" or "/standard" || f.Pointer.StartsWith("/bed", StringComparison.Ordinal)))
        {
            return null;
        }

        var sheet = calculation.NewSheet();
        var date = Dates.Read(request.Date);
        if (date is null)
        {
            calculation.Assume([new Assumption("date-of-request", $"No date was given: the check is made for {Dates.Write(calculation.Today)}.", Citation.OurJudgement)]);
        }

        Finding[] findings =
        [
            .. OrganicChecks.OnTheShelf(materials.Select(m => m.Material), calculation.Tables.OrganicRules),
            .. bed is null ? [] : OfBed(bed, request, date ?? calculation.Today, sheet, calculation),
        ];
        return new CheckAnswer(
            standard,
            [.. findings.Select(f => FindingAnswer.Of(f, calculation))],
            WorkingWriter.Write(sheet?.Lines, calculation.Bibliography),
            faults.Count > 0 ? faults.All : null,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions());
    }

    private static IEnumerable<Finding> OfBed(Bed bed, CheckRequest request, DateOnly date, WorkingSheet? sheet, Calculation calculation)
    {
        var (ratings, need) = (new List<Rating>(), new BedNeed([], [], [], []));
        if (bed.SoilTest.Readings.Count > 0 && GuideOf.Choose([bed.SoilTest], request.Guide, request.Region, [.. bed.Plantings.Select(p => p.Crop.Id)], calculation) is { } chosen)
        {
            var context = new RatingContext(bed.Plantings[0].Crop.Id, null, null);
            ratings.AddRange(bed.SoilTest.Readings.Select(r => chosen.Guide.Rate(bed.SoilTest, r, context)).Where(r => r.IsGiven).Select(r => r.Value));
            need = NeedCalculation.For(bed.SoilTest, chosen.Guide, calculation.Tables.RateTables, ratings, bed.Plantings, bed.Previous, calculation.Tables.CoverCrops, null);
        }

        calculation.Assume(bed.Assumptions);
        return
        [
            .. OrganicChecks.For(bed, [], ratings, need, calculation.Tables.OrganicRules, date),
            .. MicronutrientGuard.For(bed, [], ratings, need, calculation.Tables.OrganicRules, date, calculation.Tables.Materials.Values, sheet),
        ];
    }

    private static string? Standard(string? asked, Calculation calculation)
    {
        var held = calculation.Tables.OrganicRules.Values.Select(r => r.Standard).Distinct(StringComparer.Ordinal).ToList();
        if (held.Find(s => asked is null || s.Contains(asked.Trim(), StringComparison.OrdinalIgnoreCase)) is { } found)
        {
            return found;
        }

        calculation.Faults.Add("/standard", "unknown-standard", $"\"{Rules.Clip(asked)}\" is not a standard that the tables hold.", $"Held: {string.Join("; ", held)}.");
        return null;
    }
}
