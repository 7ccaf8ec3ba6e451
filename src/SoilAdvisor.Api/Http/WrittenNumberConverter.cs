using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace SoilAdvisor.Api.Http;

/// <summary>Reads any JSON value as a number still to be judged; writes a number.</summary>
internal sealed class WrittenNumberConverter : JsonConverter<WrittenNumber>
{
    public override WrittenNumber Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.Number:
                return new WrittenNumber(Encoding.UTF8.GetString(reader.HasValueSequence ? reader.ValueSequence.ToArray() : reader.ValueSpan));
            case JsonTokenType.String:
                return new WrittenNumber(reader.GetString()!);
            case JsonTokenType.True:
                return new WrittenNumber("true");
            case JsonTokenType.False:
                return new WrittenNumber("false");
            default:
                var words = reader.TokenType == JsonTokenType.StartArray ? "a list" : "an object";
                reader.Skip();
                return new WrittenNumber(words);
        }
    }

    public override void Write(Utf8JsonWriter writer, WrittenNumber value, JsonSerializerOptions options)
    {
        if (value.Number is { } number)
        {
            writer.WriteNumberValue(number);
        }
        else
        {
            writer.WriteStringValue(value.Text);
        }
    }
}
