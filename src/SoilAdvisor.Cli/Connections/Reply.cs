using System.Net;
using System.Text.Json;
using SoilAdvisor.Cli.Files;

namespace SoilAdvisor.Cli.Connections;

/// <summary>What the service answered.</summary>
/// <param name="Status">HTTP status.</param>
/// <param name="Body">The answer as it came.</param>
internal sealed record Reply(HttpStatusCode Status, byte[] Body)
{
    /// <summary>True when there is a result.</summary>
    public bool IsDone => (int)Status is >= 200 and < 300;

    /// <summary>The result as JSON.</summary>
    public JsonElement Json()
    {
        using var document = JsonDocument.Parse(Body);
        return document.RootElement.Clone();
    }

    /// <summary>All that the service complains of, at the places in the user's files.</summary>
    public IReadOnlyList<Complaint> Complaints(Places places)
    {
        try
        {
            using var problem = JsonDocument.Parse(Body);
            var root = problem.RootElement;
            var errors = root.TryGetProperty("errors", out var list) && list.ValueKind == JsonValueKind.Array
                ? list.EnumerateArray().Select(e => ComplaintOf(e, places)).ToList()
                : [];
            return errors.Count > 0
                ? errors
                : [new("The service", root.Text("detail") ?? root.Text("title") ?? $"Status {(int)Status}.", "")];
        }
        catch (JsonException)
        {
            return [new("The service", $"It answered with status {(int)Status} and no explanation.", "Check that the address is that of a SoilAdvisor service.")];
        }
    }

    /// <summary>One error or refusal, at its place in the user's files.</summary>
    public static Complaint ComplaintOf(JsonElement error, Places places) => new(
        places.Of(error.Text("pointer") ?? ""),
        error.Text("message") ?? "",
        error.Text("suggestion") ?? "",
        error.Text("code"));
}
