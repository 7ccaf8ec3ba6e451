namespace SoilAdvisor.Api.Answers;

/// <summary>A number with its unit.</summary>
internal sealed record Quantity(decimal Value, string Unit);
