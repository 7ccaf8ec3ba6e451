using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>One cation's part of the exchange.</summary>
/// <param name="Cation">Ca, Mg, K or Na.</param>
/// <param name="Milliequivalents">Its charge, in the unit of the balance.</param>
/// <param name="Saturation">Its part of the exchange capacity.</param>
public sealed record CationShare(Analyte Cation, double Milliequivalents, Saturation Saturation);
