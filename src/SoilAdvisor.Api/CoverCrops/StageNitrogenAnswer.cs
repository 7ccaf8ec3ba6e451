using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Nitrogen if it is grown and killed at a stage; available below zero means that it ties nitrogen up.</summary>
internal sealed record StageNitrogenAnswer(
    string Stage, decimal NitrogenPercentLow, decimal NitrogenPercentHigh, decimal CarbonToNitrogenLow, decimal CarbonToNitrogenHigh, QuantityRange PlantAvailableNitrogen, bool AtPrintedLimit, string Basis, CitedAs By) : Sourced(By);
