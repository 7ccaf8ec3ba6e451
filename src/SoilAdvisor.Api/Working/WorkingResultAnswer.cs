namespace SoilAdvisor.Api.Working;

/// <summary>What a line came to: a number in a unit, or words.</summary>
internal sealed record WorkingResultAnswer(string? Symbol, decimal? Value, string? Text, string? Unit);
