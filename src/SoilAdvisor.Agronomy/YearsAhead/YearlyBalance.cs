using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>What reaches a bed and what leaves it in a year. Leaching, erosion, seed and irrigation are left out.</summary>
/// <typeparam name="TForm">The form counted: total P2O5 or K2O.</typeparam>
/// <param name="Applied">Spread each year, low end of the analyses.</param>
/// <param name="AppliedHigh">The same, high end.</param>
/// <param name="Once">Spread once only, before the first harvest: since the sample, and with the lime; low end.</param>
/// <param name="OnceHigh">The same, high end.</param>
/// <param name="Removed">Taken away each year by the harvests.</param>
public sealed record YearlyBalance<TForm>(Rate<TForm> Applied, Rate<TForm> AppliedHigh, Rate<TForm> Once, Rate<TForm> OnceHigh, Rate<TForm> Removed)
    where TForm : IBalancedForm;
