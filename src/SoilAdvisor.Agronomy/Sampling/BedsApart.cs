namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>Two beds that may not share a composite, and every reason why.</summary>
/// <param name="First">Id of one bed.</param>
/// <param name="Second">Id of the other.</param>
/// <param name="Reasons">Each a plain sentence.</param>
public sealed record BedsApart(string First, string Second, IReadOnlyList<string> Reasons);
