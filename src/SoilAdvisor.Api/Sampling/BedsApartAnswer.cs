namespace SoilAdvisor.Api.Sampling;

/// <summary>Two beds that may not share a composite.</summary>
internal sealed record BedsApartAnswer(string First, string Second, IReadOnlyList<string> Reasons);
