using FluentValidation;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Http;

/// <summary>
/// The way of every calculation: read the body, judge it, compute what can be computed, and answer. Handlers see only requests of the
/// agreed shape.
/// </summary>
internal static class Calculations
{
    /// <summary>Maps a calculation that is answered in JSON.</summary>
    /// <param name="routes">Where it hangs.</param>
    /// <param name="path">Its address.</param>
    /// <param name="calculate">The calculation; null when nothing could be computed (then the refusals say why).</param>
    public static RouteHandlerBuilder MapCalculation<TRequest, TAnswer>(
        this IEndpointRouteBuilder routes, string path, Func<TRequest, Calculation, TAnswer?> calculate)
        where TRequest : class
        where TAnswer : class =>
        routes.MapPost(path, (Delegate)((HttpContext context) => RunAsync(context, calculate, (answer, _) => TypedResults.Json(answer, ApiJson.TypeOf<TAnswer>()))))
            .WithCalculationMetadata<TRequest>()
            .Produces<TAnswer>();

    /// <summary>What every calculation takes and may answer, for the OpenAPI document.</summary>
    public static RouteHandlerBuilder WithCalculationMetadata<TRequest>(this RouteHandlerBuilder endpoint)
        where TRequest : class => endpoint
        .Accepts<TRequest>("application/json")
        .WithMetadata(new TakesOptions())
        .Produces<Problem>(StatusCodes.Status400BadRequest, Problem.MediaType)
        .Produces<Problem>(StatusCodes.Status413PayloadTooLarge, Problem.MediaType)
        .Produces<Problem>(StatusCodes.Status415UnsupportedMediaType, Problem.MediaType)
        .Produces<Problem>(StatusCodes.Status422UnprocessableEntity, Problem.MediaType)
        .Produces<Problem>(StatusCodes.Status503ServiceUnavailable, Problem.MediaType);

    /// <summary>One calculation from body to result.</summary>
    public static async Task<IResult> RunAsync<TRequest, TAnswer>(
        HttpContext context, Func<TRequest, Calculation, TAnswer?> calculate, Func<TAnswer, Calculation, IResult> write)
        where TRequest : class
        where TAnswer : class
    {
        if (RequestBody.WrongType(context.Request, "application/json") is { } wrong)
        {
            return wrong.ToResult();
        }

        var (bytes, unreadable) = await RequestBody.ReadAsync(context);
        if (bytes is null)
        {
            return unreadable!.ToResult();
        }

        var (request, misshapen) = RequestBody.Parse(bytes, ApiJson.TypeOf<TRequest>());
        return request is null ? misshapen!.ToResult() : Run(context, request, calculate, write);
    }

    /// <summary>One calculation from a request of the agreed shape.</summary>
    public static IResult Run<TRequest, TAnswer>(
        HttpContext context, TRequest request, Func<TRequest, Calculation, TAnswer?> calculate, Func<TAnswer, Calculation, IResult> write)
        where TRequest : class
        where TAnswer : class
    {
        var (asked, unasked) = Asked.Read(context.Request.Query);
        if (unasked.Count > 0)
        {
            return Problem.Of(StatusCodes.Status400BadRequest, unasked).ToResult();
        }

        var services = context.RequestServices;
        var faults = Judge(request, services.GetService<IValidator<TRequest>>());
        var today = DateOnly.FromDateTime(services.GetRequiredService<TimeProvider>().GetUtcNow().UtcDateTime);
        var calculation = new Calculation(services.GetRequiredService<Tables>(), asked, faults, today, context.RequestAborted);
        var answer = calculate(request, calculation);
        return answer is null || (asked.Strict && faults.Count > 0)
            ? Problem.Of(StatusCodes.Status422UnprocessableEntity, faults.All).ToResult()
            : asked.AnswersHidden ? WorkSheets.Write(context.Request, calculation) : write(answer, calculation);
    }

    private static FaultList Judge<T>(T request, IValidator<T>? validator)
    {
        var faults = new FaultList();
        foreach (var failure in validator?.Validate(request).Errors ?? [])
        {
            faults.Add(PointerPath.FromProperty(failure.PropertyName), failure.ErrorCode, failure.ErrorMessage, (string)failure.CustomState);
        }

        return faults;
    }
}
