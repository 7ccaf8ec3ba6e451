namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>What is published on cover crops beside their own rows.</summary>
/// <param name="Species">The cover crops.</param>
/// <param name="RegionalDates">Dates printed for regions.</param>
/// <param name="PlantBack">Waits before the next crop.</param>
/// <param name="Hosts">Nematodes, diseases and insects.</param>
/// <param name="Trials">What trials found.</param>
/// <param name="StageNitrogen">Nitrogen by kind of plant and stage.</param>
/// <param name="TerminationZones">Federal termination guidance by zone.</param>
public sealed record CoverCropTables(
    IReadOnlyList<CoverCrop> Species,
    IReadOnlyList<RegionalDates> RegionalDates,
    IReadOnlyList<PlantBackRule> PlantBack,
    IReadOnlyList<CoverCropHost> Hosts,
    IReadOnlyList<CoverCropTrial> Trials,
    IReadOnlyList<StageNitrogenContent> StageNitrogen,
    IReadOnlyList<TerminationZone> TerminationZones);
