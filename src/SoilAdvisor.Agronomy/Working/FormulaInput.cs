namespace SoilAdvisor.Agronomy.Working;

/// <summary>A symbol and how its number is read from the formula's typed inputs, in the symbol's unit.</summary>
/// <typeparam name="TIn">Inputs of the formula.</typeparam>
/// <param name="Symbol">The symbol.</param>
/// <param name="Read">Reads the number in the symbol's unit.</param>
public sealed record FormulaInput<TIn>(Symbol Symbol, Func<TIn, double> Read);
