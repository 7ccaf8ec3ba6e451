namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>A bed that may be sampled together with others.</summary>
/// <param name="Id">The grower's id.</param>
/// <param name="Soil">Its soil, in the grower's words or the survey's; null when not said.</param>
/// <param name="CropHistory">Crops of the last seasons, in any order; null when not said, empty for none.</param>
/// <param name="Amendments">What was spread in the last seasons, in any order; null when not said, empty for none.</param>
/// <param name="Site">In the open or under a tunnel; null when not said.</param>
public sealed record SampledBed(string Id, string? Soil, IReadOnlyList<string>? CropHistory, IReadOnlyList<string>? Amendments, GrowingSite? Site);
