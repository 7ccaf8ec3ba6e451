using System.Text.Json;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>On which line each member of a JSON file stands, by its path, for example <c>readWith[0].guide</c>.</summary>
internal sealed class JsonLines
{
    private readonly Dictionary<string, int> lines = new(StringComparer.Ordinal);

    /// <summary>The line of a member; 1 when the file does not hold it.</summary>
    public int this[string path] => lines.GetValueOrDefault(path, 1);

    public static JsonLines Of(ReadOnlySpan<byte> json)
    {
        var found = new JsonLines();
        var reader = new Utf8JsonReader(json);
        var open = new Stack<Container>();
        var (member, line, seen) = ("", 1, 0);
        while (reader.Read())
        {
            line += json[seen..(int)reader.TokenStartIndex].Count((byte)'\n');
            seen = (int)reader.TokenStartIndex;
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    member = open.Peek().Member(reader.GetString()!);
                    found.lines.TryAdd(member, line);
                    break;
                case JsonTokenType.StartObject or JsonTokenType.StartArray:
                    var path = open.TryPeek(out var parent) && parent.IsArray ? parent.NextElement() : member;
                    found.lines.TryAdd(path, line);
                    open.Push(new Container(path, reader.TokenType == JsonTokenType.StartArray));
                    break;
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    open.Pop();
                    break;
                default:
                    if (open.TryPeek(out var array) && array.IsArray)
                    {
                        found.lines.TryAdd(array.NextElement(), line);
                    }
                    break;
            }
        }
        return found;
    }

    private sealed class Container(string path, bool isArray)
    {
        private int next;

        public bool IsArray => isArray;

        public string Member(string name) => path.Length == 0 ? name : $"{path}.{name}";

        public string NextElement() => string.Create(CultureInfo.InvariantCulture, $"{path}[{next++}]");
    }
}
