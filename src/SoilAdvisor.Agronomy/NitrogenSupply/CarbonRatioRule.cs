using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>A printed threshold of the carbon to nitrogen ratio, or one of our classes by it.</summary>
/// <param name="Use">What it is read for.</param>
/// <param name="From">Lowest ratio, inclusive; of a tie-up threshold the ratio above which it begins; null for none.</param>
/// <param name="Below">Ratio it no longer holds for; null for none.</param>
/// <param name="Low">Low end of the share of total nitrogen; null below zero by an unknown amount, or for a threshold.</param>
/// <param name="High">High end; null for a threshold.</param>
/// <param name="Source">Where it stands.</param>
public sealed record CarbonRatioRule(CarbonRatioUse Use, decimal? From, decimal? Below, ShareOf<TotalN>? Low, ShareOf<TotalN>? High, Citation Source);
