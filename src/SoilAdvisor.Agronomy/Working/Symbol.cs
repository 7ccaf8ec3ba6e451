namespace SoilAdvisor.Agronomy.Working;

/// <summary>One letter of a formula.</summary>
/// <param name="Name">The symbol as the formula shows it.</param>
/// <param name="Meaning">What it stands for, in trade words.</param>
/// <param name="Unit">The unit the formula takes it in; empty for a pure number.</param>
/// <param name="Min">Lowest value the publication covers, inclusive; null where none is printed.</param>
/// <param name="Max">Highest value the publication covers, inclusive; null where none is printed.</param>
public sealed record Symbol(string Name, string Meaning, string Unit, double? Min = null, double? Max = null);
