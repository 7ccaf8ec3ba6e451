using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>A requirement that the offered materials cannot meet together with the others.</summary>
/// <param name="Nutrient">Which nutrient.</param>
/// <param name="PlantingIndex">Which planting; null for the season.</param>
/// <param name="By">By how much it is missed.</param>
/// <param name="IsCeiling">True when a ceiling would be broken, false when a floor is missed.</param>
/// <param name="WhatWouldMeetIt">What would, in words: materials of the tables not offered, or a looser limit.</param>
public sealed record Shortfall(Nutrient Nutrient, int? PlantingIndex, MassPerArea By, bool IsCeiling, string WhatWouldMeetIt);
