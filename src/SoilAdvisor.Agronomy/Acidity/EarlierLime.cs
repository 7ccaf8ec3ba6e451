using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Lime that was spread earlier, which the soil test may not show yet.</summary>
/// <param name="What">The material in words.</param>
/// <param name="Spread">What was spread, counted as calcium carbonate equivalent; null when the amount was not said.</param>
/// <param name="Date">Day of spreading.</param>
public sealed record EarlierLime(string What, Rate<CalciumCarbonate>? Spread, DateOnly Date);
