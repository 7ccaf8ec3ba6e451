using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>Seed that the farm has or can buy.</summary>
/// <param name="CoverCrop">Id of the species.</param>
/// <param name="OnHand">Seed on the shelf; not below zero.</param>
/// <param name="CanBuy">False when no more than what is on hand may be used.</param>
/// <param name="Pack">Size of the pack it is sold in; null for any amount.</param>
/// <param name="PricePerKilogram">Price; null when none is given. None is assumed.</param>
public sealed record SeedStock(string CoverCrop, Mass OnHand, bool CanBuy, Mass? Pack, Money? PricePerKilogram);
