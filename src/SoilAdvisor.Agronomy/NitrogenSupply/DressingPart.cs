using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>One material in one dressing.</summary>
/// <param name="Offered">The material.</param>
/// <param name="Rate">Its rate in this dressing.</param>
/// <param name="PerBed">Its mass for the bed.</param>
/// <param name="Nitrogen">Available nitrogen of the season that it brings.</param>
/// <param name="SpreadBy">Last day to spread it; null when not known.</param>
public sealed record DressingPart(OfferedMaterial Offered, MassPerArea Rate, Mass PerBed, RateRange Nitrogen, DateOnly? SpreadBy);
