using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>What the soil test itself does not say and yet decides which scale of a guide applies.</summary>
/// <param name="CropGroup">The crop's id or group; null when no crop is named.</param>
/// <param name="SoilGroup">Texture; null takes the soil test's own.</param>
/// <param name="Subregion">Part of the guide's region; null when not named.</param>
public readonly record struct RatingContext(string? CropGroup, SoilGroup? SoilGroup, string? Subregion);
