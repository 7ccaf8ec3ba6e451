namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>The nitrogen of a bed through the season.</summary>
internal sealed record NitrogenInTimeAnswer(IReadOnlyList<PlantingNitrogenAnswer> Plantings, IReadOnlyList<NitrogenFactorAnswer> Factors);
