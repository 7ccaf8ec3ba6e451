namespace SoilAdvisor.Agronomy.Working;

/// <summary>The result's symbol and how its number is read from the typed result, in the symbol's unit.</summary>
/// <typeparam name="TOut">Result of the formula.</typeparam>
/// <param name="Symbol">The symbol.</param>
/// <param name="Read">Reads the number in the symbol's unit.</param>
public sealed record FormulaOutput<TOut>(Symbol Symbol, Func<TOut, double> Read);
