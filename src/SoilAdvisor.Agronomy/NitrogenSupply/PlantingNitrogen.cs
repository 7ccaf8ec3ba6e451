using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>The nitrogen of one planting through its season.</summary>
/// <param name="PlantingIndex">Which planting of the bed, from 0.</param>
/// <param name="Crop">The crop.</param>
/// <param name="Need">The guide's rate.</param>
/// <param name="Dressings">Base dressing first, then the side-dressings; the parts of a material add up to its rate in the plan.</param>
/// <param name="Days">The account by date.</param>
/// <param name="Credits">Credits that count for it, each once.</param>
/// <param name="TiedUp">Nitrogen that carbon-rich materials tie up, below zero; null for none.</param>
/// <param name="Uptake">When the crop takes nitrogen up, as far as that is published.</param>
/// <param name="NitrateTest">What a pre-sidedress nitrate test changes; null where none is held for the crop.</param>
/// <param name="AfterHarvest">What may be left, and what becomes of it.</param>
/// <param name="Source">Where the guide's rate stands.</param>
public sealed record PlantingNitrogen(
    int PlantingIndex,
    Crop Crop,
    RateRange Need,
    IReadOnlyList<NitrogenDressing> Dressings,
    IReadOnlyList<NitrogenDay> Days,
    IReadOnlyList<NutrientCredit> Credits,
    RateRange? TiedUp,
    Cited<string> Uptake,
    Cited<string>? NitrateTest,
    Cited<string> AfterHarvest,
    Citation Source);
