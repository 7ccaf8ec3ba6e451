using System.Globalization;
using System.Text;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Planning;
using SoilAdvisor.Reports;

namespace SoilAdvisor.Api.Plans;

/// <summary>POST /v1/plans, in four media types.</summary>
internal static class PlanEndpoints
{
    private const string Json = "application/json";
    private const string Html = "text/html";
    private const string Markdown = "text/markdown";
    private const string Csv = "text/csv";

    private static readonly string[] MediaTypes = [Json, Html, Markdown, Csv];

    public static void MapPlans(this IEndpointRouteBuilder routes) => routes
        .MapPost("/v1/plans", (Delegate)PlanAsync)
        .WithCalculationMetadata<PlanRequest>()
        .Produces<PlanAnswer>(StatusCodes.Status200OK, Json, Html, Markdown, Csv)
        .Produces<Problem>(StatusCodes.Status406NotAcceptable, Problem.MediaType)
        .WithTags("Plans").WithName("PlanFarm").WithSummary("Plan what to spread on each bed, with cover crops, findings and purchases");

    private static async Task<IResult> PlanAsync(HttpContext context) => MediaChoice.Of(context.Request, MediaTypes) is { } type
        ? await Calculations.RunAsync<PlanRequest, Planned>(context, Plan, (planned, calculation) => Write(planned, type, calculation))
        : Problem.Of(
            StatusCodes.Status406NotAcceptable,
            "Accept",
            "not-acceptable",
            $"A plan cannot be given as {Rules.Clip(context.Request.Headers.Accept)}.",
            $"Ask for one of: {string.Join(", ", MediaTypes)}.").ToResult();

    private static Planned? Plan(PlanRequest request, Calculation calculation)
    {
        if (PlanReader.Read(request, calculation) is not { } read)
        {
            return null;
        }

        if (!FarmPlanner.Plan(read.Request, calculation.Tables, calculation.Cancel).TryGet(out var plan, out var reason))
        {
            calculation.Faults.Add(reason.Code is "no-guide-covers" or "guide-does-not-cover" ? "/guide" : "/materials", reason);
            return null;
        }

        foreach (var bed in plan.Beds)
        {
            calculation.Keep($"Bed {bed.Bed.Id}", bed.Working);
        }

        return new Planned(request, plan, PlanWriter.Write(plan, request, read, calculation));
    }

    private static IResult Write(Planned planned, string type, Calculation calculation) => type switch
    {
        Html => TypedResults.Content(HtmlReport.Write(ForPaper(planned, calculation), calculation.Tables.Sources, UnitsOf(calculation)), Html, Encoding.UTF8),
        Markdown => TypedResults.Content(MarkdownReport.Write(ForPaper(planned, calculation), calculation.Tables.Sources, UnitsOf(calculation)), Markdown, Encoding.UTF8),
        Csv => TypedResults.Content(CsvReport.Write(ForPaper(planned, calculation), calculation.Tables.Sources), Csv, Encoding.UTF8),
        _ => TypedResults.Json(planned.Answer, ApiJson.TypeOf<PlanAnswer>()),
    };

    private static ReportUnits UnitsOf(Calculation calculation) => calculation.Asked.Metric ? ReportUnits.Metric : ReportUnits.Us;

    // What could not be read is no part of the plan; on paper it would vanish, so it is said as a warning.
    private static FarmPlan ForPaper(Planned planned, Calculation calculation)
    {
        var unread = planned.Answer.Beds.Where(b => b.SoilTest is null).SelectMany(b => b.Refused ?? [])
            .Concat(calculation.Faults.All.Where(f => !f.Pointer.StartsWith("/beds/", StringComparison.Ordinal)))
            .Select(f => $"{Place(f.Pointer, planned.Request)}{f.Message} {f.Suggestion}")
            .Distinct(StringComparer.Ordinal)
            .ToList();
        return planned.Plan with
        {
            Partial = planned.Answer.Totals.Partial,
            Warnings = [.. unread, .. planned.Plan.Warnings],
            Assumptions = [.. planned.Plan.Assumptions, .. calculation.OwnAssumptions.Except(planned.Plan.Assumptions)],
        };
    }

    // A reader of paper knows samples by their names, not by their place in a request.
    private static string Place(string pointer, PlanRequest request) =>
        pointer.Split('/') is ["", "soilTests", var number, ..] && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? $"Soil test {request.SoilTests?.ElementAtOrDefault(index)?.Id ?? number}: "
            : $"Left out at {pointer}: ";

    private sealed record Planned(PlanRequest Request, FarmPlan Plan, PlanAnswer Answer);
}
