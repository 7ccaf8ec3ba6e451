using System.Text.Json;

namespace SoilAdvisor.Cli.Connections;

/// <summary>Reads members that an answer may or may not have: answers of a later service may gain members and leave none out.</summary>
internal static class JsonReading
{
    /// <summary>A member; undefined when it is not there.</summary>
    public static JsonElement At(this JsonElement element, string member) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(member, out var value) ? value : default;

    /// <summary>A member as text; null when it is not there or null.</summary>
    public static string? Text(this JsonElement element, string member) => element.At(member).AsText();

    /// <summary>A value as text; null when it is none.</summary>
    public static string? AsText(this JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => value.GetString(),
        JsonValueKind.Number => value.GetRawText(),
        JsonValueKind.True => "yes",
        JsonValueKind.False => "no",
        _ => null,
    };

    /// <summary>The entries of a list member; none when it is not there.</summary>
    public static IEnumerable<JsonElement> Each(this JsonElement element, string member) =>
        element.At(member) is { ValueKind: JsonValueKind.Array } list ? list.EnumerateArray() : [];

    /// <summary>True when there is such a member with a value.</summary>
    public static bool Has(this JsonElement element, string member) =>
        element.At(member).ValueKind is not (JsonValueKind.Undefined or JsonValueKind.Null);
}
