using SoilAdvisor.Agronomy.CoverCrops.Seed;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Mixtures;

/// <summary>What to sow of one species.</summary>
/// <param name="CoverCrop">The species.</param>
/// <param name="Share">Its share of the full rate; null when the full rate is not known.</param>
/// <param name="PureLive">Rate of pure live seed.</param>
/// <param name="PureLiveShare">Pure live seed of the bag.</param>
/// <param name="Seed">Rate of seed from the bag.</param>
/// <param name="Seeds">Live seeds on the ground; null when no seed count is held.</param>
/// <param name="Full">Its full rate alone; null when none is held or given.</param>
/// <param name="ForBed">Seed from the bag for the bed; null without a bed.</param>
/// <param name="Cost">Cost of that seed; null without a bed or a price.</param>
/// <param name="Inoculant">Inoculant group of a legume; null for others and where none is held.</param>
/// <param name="Depth">Sowing depth as published; null when none is held.</param>
/// <param name="RateSource">Where the rate stands.</param>
/// <param name="CountSource">Where the seed count stands; null when none is used.</param>
public sealed record SownSpecies(
    CoverCrop CoverCrop,
    MassShare? Share,
    MassPerArea PureLive,
    MassShare PureLiveShare,
    MassPerArea Seed,
    SeedsPerArea? Seeds,
    FullRate? Full,
    Mass? ForBed,
    Money? Cost,
    CoverCropValue? Inoculant,
    CoverCropValue? Depth,
    Citation RateSource,
    Citation? CountSource);
