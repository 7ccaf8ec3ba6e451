namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>One size class of a ground stone.</summary>
/// <param name="Passing">Sieve that it passes; null for the coarsest class, which passes none.</param>
/// <param name="RetainedOn">Sieve that it stays on; null for the finest class, which passes all.</param>
/// <param name="Percent">Percent by mass.</param>
public sealed record SieveClass(int? Passing, int? RetainedOn, decimal Percent);
