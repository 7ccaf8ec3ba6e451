using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Mistakes;

/// <summary>Numbers for both ways, in the units of their symbols.</summary>
internal sealed record MistakeRequest
{
    public IReadOnlyDictionary<string, WrittenNumber>? Inputs { get; init; }
}
