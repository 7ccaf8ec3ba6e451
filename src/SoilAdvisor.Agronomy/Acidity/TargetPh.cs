using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The pH a bed should reach, and for which crop. Between crops that disagree nothing is averaged.</summary>
/// <param name="Value">Target pH, water scale.</param>
/// <param name="Crop">Id of the crop that sets it; null when the request named the pH.</param>
/// <param name="LimeBelow">pH below which that source advises lime; null where it prints none (then any pH below target).</param>
/// <param name="Source">Where it stands.</param>
public sealed record TargetPh(decimal Value, string? Crop, decimal? LimeBelow, Citation Source);
