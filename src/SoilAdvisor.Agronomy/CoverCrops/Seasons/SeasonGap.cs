using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>A bed that stands free once, and what could grow on it then. A bed with two gaps stands twice.</summary>
/// <param name="Bed">The user's id of the bed.</param>
/// <param name="Ground">Ground to sow; above zero.</param>
/// <param name="Selection">The gap and the cover crops that fit it, best first.</param>
/// <param name="NextCrop">Name of the crop that follows; null when not known.</param>
/// <param name="Plant">Day that the next crop is planted; null takes the day after the gap.</param>
/// <param name="Crops">Other crops of the bed with their times, for the family gap.</param>
public sealed record SeasonGap(string Bed, Area Ground, CoverCropSelection Selection, string? NextCrop, DateOnly? Plant, IReadOnlyList<CropTime> Crops)
{
    /// <summary>Day that the next crop can be planted.</summary>
    public DateOnly PlantingDay => Plant ?? Selection.Gap.To.AddDays(1);
}
