using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>A limit of the guide and when the test reaches it.</summary>
/// <param name="What">Which limit, in words: "where the target begins".</param>
/// <param name="Level">The limit, mg/kg.</param>
/// <param name="By">When, by the balance.</param>
public sealed record ReachedLevel(string What, SoilConcentration Level, YearsToLevel By);
