using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>The nitrogen of one planting.</summary>
internal sealed record PlantingNitrogenAnswer(
    int Planting,
    string Crop,
    QuantityRange Need,
    IReadOnlyList<DressingAnswer> Dressings,
    IReadOnlyList<NitrogenDayAnswer> Days,
    IReadOnlyList<string> Credits,
    QuantityRange? TiedUp,
    SaidAnswer Uptake,
    SaidAnswer? NitrateTest,
    SaidAnswer AfterHarvest,
    CitedAs By) : Sourced(By);
