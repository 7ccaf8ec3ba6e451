using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Formulas;

/// <summary>A result with its symbol and unit.</summary>
internal sealed record FormulaResultAnswer(string Symbol, decimal Value, string Unit, CitedAs By) : Sourced(By);
