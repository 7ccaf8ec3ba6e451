using SoilAdvisor.Agronomy.Mistakes;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Formulas;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Mistakes;

/// <summary>Common mistakes as a list, and each worked beside the right way.</summary>
internal static class MistakeEndpoints
{
    private const int Digits = 10;

    public static void MapMistakes(this IEndpointRouteBuilder routes)
    {
        routes.MapCatalogue("mistakes", "mistake", _ => CommonMistakes.All, _ => Find, (mistake, _, bibliography) => MistakeEntry.Of(mistake, bibliography));
        routes.MapPost("/v1/mistakes/{id}", (string id, HttpContext context) => WorkAsync(id, context))
            .WithCalculationMetadata<MistakeRequest>()
            .Produces<MistakeAnswer>()
            .Produces<Problem>(StatusCodes.Status404NotFound, Problem.MediaType)
            .WithTags("Formulas").WithName("WorkMistake").WithSummary("Work a common mistake beside the right way, and show the size of the error");
    }

    private static async Task<IResult> WorkAsync(string id, HttpContext context) => Find(id).TryGet(out var mistake, out var reason)
        ? await Calculations.RunAsync<MistakeRequest, MistakeAnswer>(
            context, (request, calculation) => Work(mistake, request, calculation), (answer, _) => TypedResults.Json(answer, ApiJson.TypeOf<MistakeAnswer>()))
        : Problem.Of(StatusCodes.Status404NotFound, [Fault.Of("id", reason)]).ToResult();

    private static MistakeAnswer? Work(CommonMistake mistake, MistakeRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var numbers = FormulaInputs.Read(request.Inputs, faults);
        if (faults.Count > 0)
        {
            return null;
        }

        var sheet = new WorkingSheet();
        calculation.Keep(mistake.Title, sheet.Lines);
        if (!mistake.Work(numbers, sheet).TryGet(out var size, out var reason)
            || (reason = FormulaInputs.TooLarge(mistake.Right, size.Right) ?? FormulaInputs.TooLarge(mistake.Mistaken, size.Mistaken)) is not null)
        {
            faults.Add("/inputs", reason);
            return null;
        }

        Quantity Of(double value) => new(Units.Rounded(value, Digits), mistake.Right.Result.Unit);
        return new MistakeAnswer(
            mistake.Id,
            mistake.Title,
            mistake.WhatGoesWrong,
            mistake.HowToNotice,
            Of(size.Right),
            Of(size.Mistaken),
            Of(size.Difference),
            size.Percent is { } percent ? Units.Rounded(percent, Digits) : null,
            WorkingWriter.Write(sheet.Lines, calculation.Bibliography)!,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions());
    }

    private static Answer<CommonMistake> Find(string id)
    {
        if (CommonMistakes.All.FirstOrDefault(m => m.Id == id) is { } mistake)
        {
            return Answer<CommonMistake>.Given(mistake);
        }

        var near = NearestNames.Of(id, CommonMistakes.All.Select(m => m.Id));
        return Answer<CommonMistake>.Refused("unknown-mistake", $"\"{Rules.Clip(id)}\" is not a known mistake.", near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : "GET /v1/mistakes lists them.");
    }
}
