using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>What the equation comes to for one number of the varied symbol.</summary>
/// <param name="Value">The number.</param>
/// <param name="Result">The result in its unit; left out where there is none.</param>
/// <param name="Refused">Why there is none.</param>
internal sealed record VariedAnswer(decimal Value, decimal? Result, Fault? Refused);
