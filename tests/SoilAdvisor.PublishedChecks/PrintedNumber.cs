namespace SoilAdvisor.PublishedChecks;

/// <summary>A printed number with its unit.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit as printed.</param>
public sealed record PrintedNumber(double Value, string Unit);
