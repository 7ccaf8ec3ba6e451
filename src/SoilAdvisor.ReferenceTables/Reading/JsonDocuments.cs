using System.Text.Json;
using System.Text.RegularExpressions;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>Reads JSON documents strictly: unknown, missing and repeated members are refused.</summary>
internal static partial class JsonDocuments
{
    public const string ShapeCode = "json-shape";

    private static readonly JsonSerializerOptions Options = new(JsonSerializerOptions.Strict) { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    /// <summary>The document, or null after its shape fault was added to <paramref name="problems"/>.</summary>
    public static Document<T>? Read<T>(TableText text, List<TableProblem> problems)
        where T : class
    {
        try
        {
            if (JsonSerializer.Deserialize<T>(text.Bytes, Options) is { } value)
            {
                return new Document<T>(text.Path, JsonLines.Of(text.Bytes), value);
            }
            problems.Add(new TableProblem(text.Path, 1, null, ShapeCode, "The file says null where a document is expected."));
        }
        catch (JsonException fault)
        {
            problems.Add(new TableProblem(text.Path, (int)(fault.LineNumber ?? 0) + 1, fault.Path is "$" or null ? null : fault.Path, ShapeCode, InPlainWords(fault.Message)));
        }
        return null;
    }

    // The serializer names our types, which mean nothing to whoever writes a table.
    private static string InPlainWords(string message)
    {
        var end = message.IndexOf(" Path: $", StringComparison.Ordinal);
        return TypeNames().Replace(UnknownMember().Replace(end < 0 ? message : message[..end], "is not known in this document"), "this document");
    }

    [GeneratedRegex(@"could not be mapped to any \.NET member contained in type '[^']*'")]
    private static partial Regex UnknownMember();

    [GeneratedRegex(@"type '[^']*'")]
    private static partial Regex TypeNames();
}
