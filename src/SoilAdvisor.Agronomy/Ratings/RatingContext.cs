using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>What besides the value decides which scale of a guide applies.</summary>
/// <param name="CropGroup">The crop's id or group; null when no crop is named.</param>
/// <param name="SoilGroup">Texture; null when not known.</param>
/// <param name="Subregion">Part of the guide's region; null when not named.</param>
/// <param name="Cec">Cation exchange capacity, meq/100 g; null when not reported.</param>
public readonly record struct RatingContext(string? CropGroup, SoilGroup? SoilGroup, string? Subregion, decimal? Cec);
