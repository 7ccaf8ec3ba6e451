using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>Acidity's part of the exchange.</summary>
/// <param name="Milliequivalents">Its charge, in the unit of the balance.</param>
/// <param name="Saturation">Its part of the exchange capacity.</param>
/// <param name="From">Where it comes from, in words: the laboratory's own acidity, a named buffer, or none counted.</param>
/// <param name="Source">Where the rule stands.</param>
public sealed record AcidityShare(double Milliequivalents, Saturation Saturation, string From, Citation Source);
