using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>Seed of one species over all beds.</summary>
/// <param name="CoverCrop">The species.</param>
/// <param name="Beds">Beds that grow it.</param>
/// <param name="Needed">Seed for them; null where the tables hold no rate.</param>
/// <param name="OnHand">Seed on the shelf.</param>
/// <param name="ToBuy">Seed to buy, in whole packs where it is sold so; null where the need is not known.</param>
/// <param name="Packs">Number of packs; null when it is not sold in packs.</param>
/// <param name="Pack">Size of a pack; null when it is not sold in packs.</param>
/// <param name="Cost">Cost of what is bought; null without a price.</param>
public sealed record SeedNeed(CoverCrop CoverCrop, int Beds, Mass? Needed, Mass OnHand, Mass? ToBuy, int? Packs, Mass? Pack, Money? Cost);
