using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Microsoft.Net.Http.Headers;

namespace SoilAdvisor.Api.Http;

/// <summary>The first gate: size, content type, JSON, shape. What passes is a request that can be judged.</summary>
internal static class RequestBody
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false, MaxDepth = Limits.Depth };

    /// <summary>Reads the whole body, at most to the limit.</summary>
    public static async Task<(byte[]? Bytes, Problem? Problem)> ReadAsync(HttpContext context)
    {
        var limits = context.RequestServices.GetRequiredService<Limits>();
        if (context.Request.ContentLength > limits.BodyBytes)
        {
            return (null, Problems.TooLarge(limits));
        }

        using var body = new MemoryStream();
        var buffer = new byte[16_384];
        int read;
        while ((read = await context.Request.Body.ReadAsync(buffer, context.RequestAborted)) > 0)
        {
            // The server counts too, but a test server or another host may not.
            if (body.Length + read > limits.BodyBytes)
            {
                return (null, Problems.TooLarge(limits));
            }

            body.Write(buffer, 0, read);
        }

        return body.Length == 0
            ? (null, Problem.Of(StatusCodes.Status400BadRequest, "", "empty-body", "The body is empty.", "Send the request as JSON; /docs shows what this address takes."))
            : (body.ToArray(), null);
    }

    /// <summary>Whether the body says that it is one of these media types, in UTF-8.</summary>
    public static Problem? WrongType(HttpRequest request, params ReadOnlySpan<string> accepted)
    {
        if (MediaTypeHeaderValue.TryParse(request.ContentType, out var given)
            && accepted.Contains(given.MediaType.Value?.ToLowerInvariant())
            && (!given.Charset.HasValue || given.Charset.Value.Trim('"').Equals("utf-8", StringComparison.OrdinalIgnoreCase)))
        {
            return null;
        }

        return UnsupportedType(request, string.Join(" or ", accepted.ToArray()), accepted[0]);
    }

    /// <summary>Says which content types an address takes.</summary>
    public static Problem UnsupportedType(HttpRequest request, string accepted, string usual)
    {
        var said = request.ContentType is { Length: > 0 } type ? $"\"{(type.Length > 100 ? type[..100] + "…" : type)}\"" : "not given";
        return Problem.Of(
            StatusCodes.Status415UnsupportedMediaType,
            "",
            "content-type",
            $"The content type is {said}; this address takes {accepted} in UTF-8.",
            $"Send the header Content-Type: {usual}.");
    }

    /// <summary>Reads JSON of the agreed shape.</summary>
    public static (T? Request, Problem? Problem) Parse<T>(byte[] bytes, JsonTypeInfo<T> type)
        where T : class
    {
        try
        {
            using var document = JsonDocument.Parse(bytes, Strict);
            var faults = JsonShape.Faults(document.RootElement, type);
            return faults.Count > 0
                ? (null, Problem.Of(StatusCodes.Status400BadRequest, faults))
                : document.Deserialize(type) is { } request
                    ? (request, null)
                    : (null, Problem.Of(StatusCodes.Status400BadRequest, "", "wrong-kind", "null stands where an object belongs.", "Write an object."));
        }
        catch (JsonException fault)
        {
            return (null, Problem.Of(StatusCodes.Status400BadRequest, Malformed(fault)));
        }
    }

    private static IReadOnlyList<Fault> Malformed(JsonException fault)
    {
        var where = string.Create(CultureInfo.InvariantCulture, $"line {fault.LineNumber + 1 ?? 1}, byte {fault.BytePositionInLine + 1 ?? 1}");
        return fault.Message.Contains("Duplicate", StringComparison.OrdinalIgnoreCase)
            ? [new Fault("", "duplicate-member", $"An object holds the same member twice: {FirstSentence(fault.Message)}", "Keep one of the two.")]
            : [new Fault(where, "malformed-json", $"The body is not JSON: {FirstSentence(fault.Message)}", "Correct it there; a JSON checker shows the place. Numbers take a decimal point and no quotes; NaN is not a number.")];
    }

    // The serializer appends path and position, which the pointer already says.
    private static string FirstSentence(string message)
    {
        var end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return end > 0 ? message[..end] : message;
    }
}
