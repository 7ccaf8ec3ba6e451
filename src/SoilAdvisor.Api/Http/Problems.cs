using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.Timeouts;

namespace SoilAdvisor.Api.Http;

/// <summary>Answers for what no endpoint answers: unknown addresses, wrong methods, time-outs and our own mistakes.</summary>
internal static class Problems
{
    public static void AddProblems(this IServiceCollection services) => services.AddExceptionHandler(options =>
    {
        options.ExceptionHandler = Mistake;
        options.SuppressDiagnosticsCallback = context => context.Exception is BadHttpRequestException;
    });

    public static void UseProblems(this WebApplication app)
    {
        app.UseExceptionHandler();
        app.UseStatusCodePages(context => ForStatus(context.HttpContext).ToResult().ExecuteAsync(context.HttpContext));
    }

    public static Problem TimedOut(Limits limits) => Problem.Of(
        StatusCodes.Status503ServiceUnavailable,
        "",
        "time-limit",
        string.Create(CultureInfo.InvariantCulture, $"The answer was not ready within {limits.RequestTime.TotalSeconds} seconds, the limit for one request."),
        "Send fewer beds in one request, or try again later.");

    public static Problem TooLarge(Limits limits) => Problem.Of(
        StatusCodes.Status413PayloadTooLarge,
        "",
        "body-too-large",
        string.Create(CultureInfo.InvariantCulture, $"The body is larger than {limits.BodyBytes} bytes, the limit for one request."),
        "Send fewer beds or samples in one request.");

    private static Problem ForStatus(HttpContext context) => context.Response.StatusCode switch
    {
        StatusCodes.Status404NotFound => Problem.Of(
            StatusCodes.Status404NotFound,
            "",
            "unknown-address",
            $"There is no {Short(context.Request.Path)} here.",
            "The page /docs lists every address."),
        StatusCodes.Status405MethodNotAllowed => Problem.Of(
            StatusCodes.Status405MethodNotAllowed,
            "",
            "wrong-method",
            $"{Short(context.Request.Path)} does not take {context.Request.Method}.",
            $"Use {context.Response.Headers.Allow}."),
        StatusCodes.Status415UnsupportedMediaType when context.Request.Path.StartsWithSegments("/v1/lab-files", StringComparison.OrdinalIgnoreCase) =>
            RequestBody.UnsupportedType(context.Request, "text/csv or application/json", "text/csv"),
        StatusCodes.Status415UnsupportedMediaType => RequestBody.UnsupportedType(context.Request, "application/json", "application/json"),
        StatusCodes.Status413PayloadTooLarge => TooLarge(context.RequestServices.GetRequiredService<Limits>()),
        var other => Problem.Of(other, "", "request-refused", "The request cannot be read.", "The page /docs shows what each address takes."),
    };

    private static Task Mistake(HttpContext context)
    {
        if (context.Features.Get<IExceptionHandlerFeature>()?.Error is BadHttpRequestException bad)
        {
            context.Response.StatusCode = bad.StatusCode;
            return ForStatus(context).ToResult().ExecuteAsync(context);
        }

        var problem = Problem.Of(
            StatusCodes.Status500InternalServerError,
            "",
            "our-mistake",
            "Something went wrong on our side; nothing was computed.",
            "Report it with the trace id below and the request that you sent.");
        return (problem with { TraceId = context.TraceIdentifier }).ToResult().ExecuteAsync(context);
    }

    private static string Short(PathString path) => path.Value is { Length: > 100 } text ? text[..100] + "…" : path.Value ?? "/";
}
