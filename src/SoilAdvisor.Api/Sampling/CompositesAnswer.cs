using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Sampling;

/// <summary>Which beds may share a composite sample.</summary>
internal sealed record CompositesAnswer(
    IReadOnlyList<IReadOnlyList<string>> Together,
    IReadOnlyList<BedsApartAnswer> Apart,
    CitedAs By) : Sourced(By);
