using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>What a bed gets of one nutrient.</summary>
/// <typeparam name="TForm">The form counted: total P2O5 or K2O.</typeparam>
/// <param name="Yearly">By the plan, which repeats; low end of the analyses.</param>
/// <param name="YearlyHigh">The same, high end.</param>
/// <param name="Once">Since the sample, and with the lime; low end.</param>
/// <param name="OnceHigh">The same, high end.</param>
public sealed record Supply<TForm>(Rate<TForm> Yearly, Rate<TForm> YearlyHigh, Rate<TForm> Once, Rate<TForm> OnceHigh)
    where TForm : IBalancedForm;
