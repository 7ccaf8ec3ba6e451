using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>One reading that an index is computed from.</summary>
/// <param name="Symbol">Its letter in the formula.</param>
/// <param name="Analyte">What was measured.</param>
/// <param name="Method">The method that the formula was made for; pH is pH in water.</param>
/// <param name="Unit">The formula's unit.</param>
public sealed record IndexInput(string Symbol, Analyte Analyte, ScaleMethod Method, ReportingUnit Unit);
