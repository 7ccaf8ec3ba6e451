namespace SoilAdvisor.Agronomy.Crops;

/// <summary>Yield that the grower expects.</summary>
/// <param name="Value">How much; above zero.</param>
/// <param name="Unit">short-ton/acre, cwt/acre, bu/acre, lb/acre, t/ha or lb/100-row-ft as written by the request.</param>
public sealed record ExpectedYield(decimal Value, string Unit);
