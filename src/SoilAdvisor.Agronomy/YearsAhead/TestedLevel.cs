using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>A soil test as a projection starts from it: a level, the extractant that it means something for, and how sure it is.</summary>
/// <param name="Extractant">The extractant.</param>
/// <param name="Level">What was measured, mg/kg.</param>
/// <param name="Spread">Spread of the result; zero where none is published.</param>
/// <param name="Where">Line of the report.</param>
public sealed record TestedLevel(Extractant Extractant, SoilConcentration Level, CoefficientOfVariation Spread, string Where);
