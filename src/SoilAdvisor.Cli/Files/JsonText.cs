using System.Text.Json;
using System.Text.Json.Nodes;

namespace SoilAdvisor.Cli.Files;

/// <summary>Reads a JSON file that the user wrote.</summary>
internal static class JsonText
{
    /// <summary>The document; null when it is malformed, which is then among the complaints.</summary>
    public static JsonNode? Read(InputFile file, List<Complaint> complaints)
    {
        try
        {
            return JsonNode.Parse(file.Content, documentOptions: new JsonDocumentOptions { AllowDuplicateProperties = false });
        }
        catch (JsonException fault)
        {
            var line = (fault.LineNumber ?? 0) + 1;
            var column = (fault.BytePositionInLine ?? 0) + 1;
            complaints.Add(new($"{file.Name} line {line}, character {column}", "This is not well-formed JSON.", "Look for a missing comma, quote or bracket at or just before this place, or a name written twice."));
            return null;
        }
    }
}
