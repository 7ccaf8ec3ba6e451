using System.Text.Json.Nodes;

namespace SoilAdvisor.Cli.Files;

/// <summary>Builds parts of a request.</summary>
internal static class Members
{
    /// <summary>An object of the members that have a value: an empty cell says that something is not known, and is left out.</summary>
    public static JsonObject Of(params ReadOnlySpan<(string Name, JsonNode? Value)> members)
    {
        var made = new JsonObject();
        foreach (var (name, value) in members)
        {
            if (value is not null)
            {
                made.Add(name, value);
            }
        }

        return made;
    }

    /// <summary>Puts a value where a pointer says, making the objects on the way.</summary>
    public static void Set(JsonObject request, string pointer, JsonNode value)
    {
        var members = pointer[1..].Split('/');
        var part = request;
        foreach (var member in members[..^1])
        {
            part = part[member] as JsonObject ?? (JsonObject)(part[member] = new JsonObject());
        }

        part[members[^1]] = value;
    }
}
