using SoilAdvisor.Agronomy.CoverCrops.Seed;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.CoverCrops.Mixtures;

/// <summary>One species of a mixture as the grower wants it. Share or seeds, not both; neither takes equal shares.</summary>
/// <param name="CoverCrop">The species.</param>
/// <param name="Share">Share of its full rate; null when seeds are given or nothing is.</param>
/// <param name="Seeds">Live seeds on the ground; null when a share is given or nothing is.</param>
/// <param name="Count">Seeds in a pound by the tag; null takes the tables'.</param>
/// <param name="FullRate">Full rate of the species alone, pure live seed; null takes the tables'.</param>
/// <param name="Tag">The seed tag; null when not given.</param>
/// <param name="PricePerKilogram">Price of the seed; null when none is given. None is assumed.</param>
public sealed record MixturePart(
    CoverCrop CoverCrop,
    MassShare? Share,
    SeedsPerArea? Seeds,
    SeedCount? Count,
    MassPerArea? FullRate,
    SeedTag? Tag,
    Money? PricePerKilogram);
