namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>A rate that the laboratory itself printed. Shown, and used first for lime where no buffer is named.</summary>
/// <param name="What">What it recommends, for example "lime".</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit as printed.</param>
/// <param name="Basis">What it counts, for example "calcium carbonate equivalent"; null when not printed.</param>
public sealed record LabRecommendation(string What, decimal Value, string Unit, string? Basis);
