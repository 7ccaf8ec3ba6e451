using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace SoilAdvisor.Api.Http;

/// <summary>
/// Compares a JSON document with the agreed shape and names every difference. The serializer alone would stop at its first fault.
/// </summary>
internal static class JsonShape
{
    public static IReadOnlyList<Fault> Faults(JsonElement element, JsonTypeInfo type)
    {
        var faults = new List<Fault>();
        Compare(element, type, "", faults);
        return faults;
    }

    private static void Compare(JsonElement element, JsonTypeInfo type, string pointer, List<Fault> faults)
    {
        if (element.ValueKind == JsonValueKind.Null)
        {
            return;
        }

        switch (type.Kind)
        {
            case JsonTypeInfoKind.Object when Is(element, JsonValueKind.Object, "an object", pointer, faults):
                CompareMembers(element, type, pointer, faults);
                break;
            case JsonTypeInfoKind.Enumerable when Is(element, JsonValueKind.Array, "a list", pointer, faults):
                CompareElements(element, type, pointer, faults);
                break;
            case JsonTypeInfoKind.Dictionary when Is(element, JsonValueKind.Object, "an object", pointer, faults):
                CompareValues(element, type, pointer, faults);
                break;
            case JsonTypeInfoKind.None when type.Type == typeof(string):
                Is(element, JsonValueKind.String, "text in quotes", pointer, faults);
                break;
            case JsonTypeInfoKind.None when type.Type == typeof(bool?) && element.ValueKind is not (JsonValueKind.True or JsonValueKind.False):
                faults.Add(Wrong(element, "true or false", pointer));
                break;
            default:
                break;
        }
    }

    private static void CompareMembers(JsonElement element, JsonTypeInfo type, string pointer, List<Fault> faults)
    {
        foreach (var member in element.EnumerateObject())
        {
            var here = PointerPath.Down(pointer, member.Name);
            if (type.Properties.FirstOrDefault(p => p.Name == member.Name) is { } property)
            {
                Compare(member.Value, type.Options.GetTypeInfo(property.PropertyType), here, faults);
            }
            else
            {
                var known = type.Properties.Select(p => p.Name).ToList();
                var near = NearestNames.Of(member.Name, known);
                faults.Add(new Fault(
                    here,
                    "unknown-member",
                    $"\"{Clipped(member.Name)}\" is not a member here.",
                    near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : $"Members here: {string.Join(", ", known)}."));
            }
        }
    }

    private static void CompareElements(JsonElement element, JsonTypeInfo type, string pointer, List<Fault> faults)
    {
        var of = type.Options.GetTypeInfo(type.ElementType!);
        var index = 0;
        foreach (var item in element.EnumerateArray())
        {
            CompareEntry(item, of, PointerPath.Down(pointer, index++), faults);
        }
    }

    private static void CompareValues(JsonElement element, JsonTypeInfo type, string pointer, List<Fault> faults)
    {
        var of = type.Options.GetTypeInfo(type.ElementType!);
        foreach (var member in element.EnumerateObject())
        {
            CompareEntry(member.Value, of, PointerPath.Down(pointer, member.Name), faults);
        }
    }

    // A member may be null, which is the same as left out; an entry of a list may not.
    private static void CompareEntry(JsonElement element, JsonTypeInfo type, string pointer, List<Fault> faults)
    {
        if (element.ValueKind == JsonValueKind.Null)
        {
            faults.Add(new Fault(pointer, "wrong-kind", "null stands where an entry belongs.", "Write the entry, or leave it out."));
            return;
        }

        Compare(element, type, pointer, faults);
    }

    private static bool Is(JsonElement element, JsonValueKind kind, string words, string pointer, List<Fault> faults)
    {
        if (element.ValueKind == kind)
        {
            return true;
        }

        faults.Add(Wrong(element, words, pointer));
        return false;
    }

    private static Fault Wrong(JsonElement element, string wanted, string pointer) => new(
        pointer,
        "wrong-kind",
        $"{KindOf(element)} stands where {wanted} belongs.",
        $"Write {wanted}.");

    private static string KindOf(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "An object",
        JsonValueKind.Array => "A list",
        JsonValueKind.String => "Text",
        JsonValueKind.Number => "A number",
        _ => "True or false",
    };

    private static string Clipped(string text) => text.Length > Limits.IdLetters ? text[..Limits.IdLetters] + "…" : text;
}
