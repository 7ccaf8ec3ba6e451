namespace SoilAdvisor.Api.Http;

/// <summary>Problem details (RFC 9457) with every fault in one list.</summary>
internal sealed record Problem(string Type, string Title, int Status, string? Detail, IReadOnlyList<Fault> Errors, string? TraceId = null)
{
    public const string MediaType = "application/problem+json";

    public static Problem Of(int status, IReadOnlyList<Fault> faults) => new("about:blank", TitleOf(status), status, DetailOf(faults), faults);

    public static Problem Of(int status, string pointer, string code, string message, string suggestion) =>
        Of(status, [new Fault(pointer, code, message, suggestion)]);

    public IResult ToResult() => TypedResults.Json(this, ApiJson.TypeOf<Problem>(), MediaType, Status);

    private static string DetailOf(IReadOnlyList<Fault> faults) => faults.Count == 1
        ? faults[0].Message
        : $"{faults.Count.ToString(CultureInfo.InvariantCulture)} faults were found; all are listed under errors.";

    private static string TitleOf(int status) => status switch
    {
        StatusCodes.Status400BadRequest => "The request is not in the agreed form; nothing was computed.",
        StatusCodes.Status404NotFound => "There is nothing at this address.",
        StatusCodes.Status405MethodNotAllowed => "This address does not take this method.",
        StatusCodes.Status406NotAcceptable => "None of the media types asked for can be given.",
        StatusCodes.Status413PayloadTooLarge => "The request is too large.",
        StatusCodes.Status415UnsupportedMediaType => "The content type is not supported.",
        StatusCodes.Status422UnprocessableEntity => "Nothing could be computed from this request.",
        StatusCodes.Status503ServiceUnavailable => "The request took too long.",
        _ => "The service made a mistake.",
    };
}
