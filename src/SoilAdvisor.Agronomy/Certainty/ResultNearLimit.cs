using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>A printed result beside a limit, in the limit's unit.</summary>
/// <param name="Result">The result.</param>
/// <param name="HalfStep">Half of its last printed digit: every value from this much below to this much above prints the same.</param>
/// <param name="Limit">The limit.</param>
/// <param name="Spread">Its spread: for pH the standard deviation in pH units, else the coefficient of variation in percent.</param>
public readonly record struct ResultNearLimit(Coefficient Result, Coefficient HalfStep, Coefficient Limit, Coefficient Spread);
