using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace SoilAdvisor.Api.Http;

/// <summary>How JSON is read and written at the door.</summary>
internal static class ApiJson
{
    /// <summary>
    /// Strict: unknown and duplicate members are refused. Letters are written as they are (the answer is JSON with nosniff, never part of a page).
    /// </summary>
    public static JsonSerializerOptions Shared { get; } = Make();

    /// <summary>How a type is written.</summary>
    public static JsonTypeInfo<T> TypeOf<T>() => (JsonTypeInfo<T>)Shared.GetTypeInfo(typeof(T));

    private static JsonSerializerOptions Make()
    {
        var options = new JsonSerializerOptions(JsonSerializerOptions.Strict)
        {
            PropertyNamingPolicy = MemberNames.Policy,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            TypeInfoResolver = WireTypes.Default,
            MaxDepth = 64,
        };
        options.MakeReadOnly();
        return options;
    }
}
