using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Formulas;

/// <summary>The formulas as a list, and each to be evaluated with one number varied by a teacher.</summary>
internal static class FormulaEndpoints
{
    public static void MapFormulas(this IEndpointRouteBuilder routes)
    {
        routes.MapCatalogue("formulas", "formula", _ => Agronomy.Working.Formulas.All, _ => Find, (formula, _, bibliography) => FormulaEntry.Of(formula, bibliography));
        routes.MapPost("/v1/formulas/{id}", (string id, HttpContext context) => CalculateAsync(id, context))
            .WithCalculationMetadata<FormulaRequest>()
            .Produces<FormulaAnswer>()
            .Produces<Problem>(StatusCodes.Status404NotFound, Problem.MediaType)
            .WithTags("Formulas").WithName("Calculate").WithSummary("Evaluate one formula, with its line of working");
    }

    private static async Task<IResult> CalculateAsync(string id, HttpContext context) => Find(id).TryGet(out var formula, out var reason)
        ? await Calculations.RunAsync<FormulaRequest, FormulaAnswer>(
            context, (request, calculation) => Calculate(formula, request, calculation), (answer, _) => TypedResults.Json(answer, ApiJson.TypeOf<FormulaAnswer>()))
        : Problem.Of(StatusCodes.Status404NotFound, [Fault.Of("id", reason)]).ToResult();

    private static FormulaAnswer? Calculate(IFormula formula, FormulaRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var numbers = FormulaInputs.Read(request.Inputs, faults);
        if (faults.Count > 0)
        {
            return null;
        }

        var sheet = new WorkingSheet();
        calculation.Keep("", sheet.Lines);
        if (!formula.Calculate(numbers, sheet).TryGet(out var result, out var reason))
        {
            faults.Add("/inputs", reason);
            return null;
        }

        if (FormulaInputs.TooLarge(formula, result) is { } tooLarge)
        {
            faults.Add("/inputs", tooLarge);
            return null;
        }

        return new FormulaAnswer(
            formula.Id,
            new FormulaResultAnswer(formula.Result.Name, Units.Rounded(result, 10), formula.Result.Unit, calculation.Cite(formula.Source)),
            request.Vary is { } variation ? Variation.Of(formula, numbers, variation) : null,
            WorkingWriter.Write(sheet.Lines, calculation.Bibliography)!,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions());
    }

    private static Answer<IFormula> Find(string id)
    {
        var all = Agronomy.Working.Formulas.All;
        if (all.FirstOrDefault(f => f.Id == id) is { } formula)
        {
            return Answer<IFormula>.Given(formula);
        }

        var near = NearestNames.Of(id, all.Select(f => f.Id));
        return Answer<IFormula>.Refused("unknown-formula", $"\"{Rules.Clip(id)}\" is not a known formula.", near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : "GET /v1/formulas lists them.");
    }
}
