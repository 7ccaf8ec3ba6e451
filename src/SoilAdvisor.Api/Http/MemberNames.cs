using System.Text.Json;

namespace SoilAdvisor.Api.Http;

/// <summary>Names of JSON members: camelCase, and a formula such as P2O5 in small letters throughout.</summary>
internal sealed class MemberNames : JsonNamingPolicy
{
    public static MemberNames Policy { get; } = new();

    public override string ConvertName(string name) =>
        name.Any(char.IsAsciiDigit) && !name.Any(char.IsAsciiLetterLower) ? name.ToLowerInvariant() : CamelCase.ConvertName(name);
}
