namespace SoilAdvisor.PublishedChecks;

/// <summary>A printed number or range with its unit.</summary>
/// <param name="Low">The number, or the low end.</param>
/// <param name="Unit">The unit as printed.</param>
/// <param name="High">The high end; null where one number is printed.</param>
public sealed record PrintedRange(double Low, string Unit, double? High = null);
