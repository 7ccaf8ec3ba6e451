using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>
/// Nitrogen to sidedress by a pre-sidedress nitrate test. It takes the place of nitrogen credits from the book, which would count the same nitrogen
/// twice, and says nothing of what was given before the crop was sidedressed.
/// </summary>
/// <param name="Crop">Id of the crop.</param>
/// <param name="Nitrate">The test's nitrate-N, mg/kg.</param>
/// <param name="Span">The printed span it lies in.</param>
/// <param name="Rate">Nitrogen to sidedress.</param>
/// <param name="Note">How it is given, in words; null for none.</param>
/// <param name="Assumptions">What was assumed.</param>
/// <param name="Source">Where the rate stands.</param>
public sealed record SidedressAdvice(string Crop, Amount Nitrate, string Span, MassPerArea Rate, string? Note, IReadOnlyList<Assumption> Assumptions, Citation Source);
