using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>After how many years the soil of a site is tested again.</summary>
/// <param name="Site">field or high-tunnel.</param>
/// <param name="Years">Years; at least 1.</param>
/// <param name="Source">Where it stands.</param>
public sealed record ResamplingInterval(string Site, int Years, Citation Source);
