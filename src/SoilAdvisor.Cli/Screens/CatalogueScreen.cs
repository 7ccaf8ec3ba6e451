using System.Text;
using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>A catalogue as a table, or one entry of it whole.</summary>
internal static class CatalogueScreen
{
    // What tells one entry from another, in reading order; a list shows those that its entries have.
    private static readonly string[] Telling = ["id", "name", "title", "what", "shown", "subject", "regions", "category", "family", "organicStatus", "section", "buffer", "analyte", "from", "to", "verdict", "value", "unit", "publisher", "year", "evidence"];

    public static void Draw(Paper paper, JsonElement answer)
    {
        if (answer.Has("item"))
        {
            Outline(paper, answer.At("item"), 0);
            paper.NameAll(answer);
            paper.Foot(answer);
            return;
        }

        var entries = answer.Each("items").ToList();
        var columns = Telling.Where(c => entries.Exists(e => e.Has(c) && e.At(c).ValueKind is not JsonValueKind.Object)).ToList();
        paper.Put([.. columns.Select(Words)], [.. entries.Select(e => columns.Select(c => Cell(e, c)).ToList())]);
    }

    private static string? Cell(JsonElement entry, string column) => entry.At(column).ValueKind == JsonValueKind.Array
        ? string.Join(", ", entry.Each(column).Select(v => v.AsText()))
        : entry.Text(column);

    private static void Outline(Paper paper, JsonElement value, int depth)
    {
        foreach (var member in value.EnumerateObject())
        {
            switch (member.Value.ValueKind)
            {
                case JsonValueKind.Object:
                    Line(paper, depth, $"{Words(member.Name)}:");
                    Outline(paper, member.Value, depth + 1);
                    break;
                case JsonValueKind.Array when member.Value.EnumerateArray().All(v => v.ValueKind is not (JsonValueKind.Object or JsonValueKind.Array)):
                    Line(paper, depth, $"{Words(member.Name)}: {string.Join(", ", member.Value.EnumerateArray().Select(v => v.AsText()))}");
                    break;
                case JsonValueKind.Array:
                    Line(paper, depth, $"{Words(member.Name)}:");
                    foreach (var entry in member.Value.EnumerateArray())
                    {
                        Line(paper, depth + 1, OneLine(entry));
                    }

                    break;
                default:
                    Line(paper, depth, $"{Words(member.Name)}: {member.Value.AsText()}");
                    break;
            }
        }
    }

    private static string OneLine(JsonElement entry) => entry.ValueKind != JsonValueKind.Object
        ? entry.AsText() ?? ""
        : "- " + string.Join(", ", entry.EnumerateObject().Select(m => m.Value.ValueKind switch
        {
            JsonValueKind.Object => $"{Words(m.Name)} ({OneLine(m.Value)[2..]})",
            JsonValueKind.Array => $"{Words(m.Name)} ({string.Join("; ", m.Value.EnumerateArray().Select(OneLine))})",
            _ => $"{Words(m.Name)} {m.Value.AsText()}",
        }));

    private static void Line(Paper paper, int depth, string words) => paper.Indented(words, 2 * depth);

    /// <summary>"organicStatus" as "organic status".</summary>
    private static string Words(string member)
    {
        var words = new StringBuilder();
        foreach (var letter in member)
        {
            words.Append(char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : letter);
        }

        return words.ToString();
    }
}
