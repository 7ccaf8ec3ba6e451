using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>The yearly rate of a material at which soil phosphorus stops climbing, when nothing else brings phosphate.</summary>
/// <param name="Offered">The material.</param>
/// <param name="Low">Rate by the richest analysis.</param>
/// <param name="Rate">Rate by the middle of the analyses.</param>
/// <param name="High">Rate by the poorest analysis.</param>
/// <param name="Nitrogen">Plant-available nitrogen that <paramref name="Rate"/> brings in the season, low end.</param>
/// <param name="NitrogenHigh">The same, high end.</param>
/// <param name="AboveLargestSingleRate">True when that much may not be spread at once.</param>
public sealed record HoldRate(OfferedMaterial Offered, MassPerArea Low, MassPerArea Rate, MassPerArea High, MassPerArea Nitrogen, MassPerArea NitrogenHigh, bool AboveLargestSingleRate);
