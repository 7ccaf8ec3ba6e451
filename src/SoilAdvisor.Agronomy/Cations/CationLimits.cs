using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>Beyond these the sum of cations says nothing about the exchange, or a cation is extreme. Each is printed somewhere or marked as ours.</summary>
/// <param name="HighestPh">Soil pH in water above which the sum is not trusted.</param>
/// <param name="NoAcidityFromPh">Soil pH in water from which a report without a buffer pH is taken to have no acidity.</param>
/// <param name="SalineSaturatedPaste">Conductivity of the saturated-paste extract above which a soil is saline, dS/m.</param>
/// <param name="SalineOneToOne">The same for one part soil to one part water, dS/m.</param>
/// <param name="SalineOneToTwo">The same for one part soil to two parts water, dS/m.</param>
/// <param name="LowCalcium">Calcium below which it is called low, mg/kg.</param>
/// <param name="LowMagnesium">Magnesium below which it is called low, mg/kg.</param>
/// <param name="MagnesiumNotBelowCalcium">Magnesium saturation as a part of calcium saturation from which it deserves attention; 1 where they are equal.</param>
public sealed record CationLimits(
    Cited<decimal> HighestPh,
    Cited<decimal> NoAcidityFromPh,
    Cited<decimal> SalineSaturatedPaste,
    Cited<decimal> SalineOneToOne,
    Cited<decimal> SalineOneToTwo,
    Cited<decimal> LowCalcium,
    Cited<decimal> LowMagnesium,
    Cited<decimal> MagnesiumNotBelowCalcium);
