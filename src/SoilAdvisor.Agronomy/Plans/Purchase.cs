using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>What the whole farm needs of one material.</summary>
/// <param name="Offered">The material.</param>
/// <param name="Needed">Mass over all beds.</param>
/// <param name="OnHand">Stock used; null when no stock was given.</param>
/// <param name="ToBuy">What is left to buy; whole packs where it is sold so.</param>
/// <param name="Packs">Number of packs; null where any amount can be had.</param>
/// <param name="Cost">Cost of what is bought; null without a price.</param>
/// <param name="Freight">Cost of its delivery; null when nothing is bought or none was given.</param>
public sealed record Purchase(OfferedMaterial Offered, Mass Needed, Mass? OnHand, Mass ToBuy, int? Packs, Money? Cost, Money? Freight);
