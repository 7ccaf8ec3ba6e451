using System.Text;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Planning.CoverSeason;
using SoilAdvisor.Reports.Calendars;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>POST /v1/cover-crops/season, as JSON or as a calendar.</summary>
internal static class SeasonEndpoints
{
    private const string Json = "application/json";
    private const string Calendar = "text/calendar";

    private static readonly string[] MediaTypes = [Json, Calendar];

    public static void MapCoverSeason(this IEndpointRouteBuilder routes) => routes
        .MapPost("/v1/cover-crops/season", (Delegate)PlanAsync)
        .WithCalculationMetadata<SeasonRequest>()
        .Produces<SeasonAnswer>(StatusCodes.Status200OK, Json, Calendar)
        .Produces<Problem>(StatusCodes.Status406NotAcceptable, Problem.MediaType)
        .WithTags("Cover crops").WithName("PlanCoverSeason").WithSummary("Which cover crop to grow when on every bed, and the seed to buy");

    private static async Task<IResult> PlanAsync(HttpContext context) => MediaChoice.Of(context.Request, MediaTypes) is { } type
        ? await Calculations.RunAsync<SeasonRequest, Planned>(context, Plan, (planned, _) => Write(planned, type))
        : Problem.Of(
            StatusCodes.Status406NotAcceptable,
            "Accept",
            "not-acceptable",
            $"A season cannot be given as {Rules.Clip(context.Request.Headers.Accept)}.",
            $"Ask for one of: {string.Join(", ", MediaTypes)}.").ToResult();

    private static Planned? Plan(SeasonRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var wish = SeasonReader.ReadWish(request.CoverSeason ?? new WrittenSeason(), "/coverSeason", calculation.Tables, faults);
        if (wish is null || request.Beds is null || faults.All.Any(f => !f.Pointer.StartsWith("/beds/", StringComparison.Ordinal)))
        {
            return null;
        }

        var gaps = SeasonReader.ReadGaps(request, calculation);
        if (gaps.Count == 0)
        {
            return null;
        }

        var date = Dates.Read(request.Date);
        if (date is null)
        {
            calculation.Assume([new Assumption("date-of-request", $"No date was given: the season is planned on {Dates.Write(calculation.Today)}.", Citation.OurJudgement)]);
        }

        var season = SeasonPlanner.Plan(gaps, wish, calculation.Cancel);
        var written = SeasonWriter.Write(season, calculation)!;
        var day = date ?? calculation.Today;
        return new Planned(season, request.Farm, day, new SeasonAnswer(
            request.Farm,
            Dates.Write(day),
            written,
            faults.Count > 0 ? faults.All : null,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions()));
    }

    private static IResult Write(Planned planned, string type) => type == Calendar
        ? TypedResults.Content(SeasonCalendar.Write(planned.Season, planned.Farm, planned.Date), Calendar, Encoding.UTF8)
        : TypedResults.Json(planned.Answer, ApiJson.TypeOf<SeasonAnswer>());

    private sealed record Planned(CoverCropSeason Season, string? Farm, DateOnly Date, SeasonAnswer Answer);
}
