using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>A change of a soil test, mg/kg, with the ends that the analyses and the soil's own answer leave open.</summary>
/// <param name="Low">Low end.</param>
/// <param name="Likely">In between.</param>
/// <param name="High">High end.</param>
public readonly record struct ChangeOfTest(Coefficient Low, Coefficient Likely, Coefficient High);
