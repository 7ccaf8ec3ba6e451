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
}
