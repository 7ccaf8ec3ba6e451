using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Sulfur;
using SoilAdvisor.Agronomy.Plans;

namespace SoilAdvisor.Planning;

/// <summary>The lime of one soil, or how to lower its pH. Never both.</summary>
/// <param name="Requirement">The requirement, for the depth worked and less earlier lime.</param>
/// <param name="Selection">Stones that meet it, and those that do not.</param>
/// <param name="Timing">How long lime takes and when to test again; null when none is spread.</param>
/// <param name="Sulfur">What to do where the pH is above the target; null elsewhere.</param>
public sealed record LimeOutcome(LimeRequirement Requirement, LimeSelection Selection, LimeTiming? Timing, SulfurAdvice? Sulfur);
