namespace SoilAdvisor.Api.Tests;

/// <summary>A response read to its end.</summary>
public sealed record Reply(HttpStatusCode Status, string? MediaType, string Text, HttpResponseMessage Message)
{
    public JsonNode Json => JsonNode.Parse(Text)!;

    public IReadOnlyList<ReplyFault> Errors => FaultsOf("errors");

    public IReadOnlyList<ReplyFault> Refused => FaultsOf("refused");

    public static async Task<Reply> OfAsync(HttpResponseMessage message) =>
        new(message.StatusCode, message.Content.Headers.ContentType?.MediaType, await message.Content.ReadAsStringAsync(), message);

    private IReadOnlyList<ReplyFault> FaultsOf(string member) => Json[member] is JsonArray faults
        ? [.. faults.Select(f => new ReplyFault((string)f!["pointer"]!, (string)f["code"]!, (string)f["message"]!, (string)f["suggestion"]!))]
        : [];
}
