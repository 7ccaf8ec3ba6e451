using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Sulfur;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>The lime of a bed: requirement, stones that meet it, and the one the plan uses.</summary>
/// <param name="Requirement">The requirement.</param>
/// <param name="Choices">Stones that qualify, best first; empty when nothing is needed or none was offered.</param>
/// <param name="Chosen">The one used; null when nothing is needed or none was offered.</param>
/// <param name="Timing">How long it takes and when to test again; null when nothing is spread or no figure is held.</param>
/// <param name="Sulfur">What to do where the pH is above the target; null elsewhere. It is advice: a plan spreads no sulfur.</param>
public sealed record LimePlan(LimeRequirement Requirement, IReadOnlyList<LimeChoice> Choices, LimeChoice? Chosen, LimeTiming? Timing, SulfurAdvice? Sulfur);
