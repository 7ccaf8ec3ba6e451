using SoilAdvisor.Agronomy.Climate;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>A cover crop's dates in a gap. Sow ≤ ready ≤ kill by, and between killing and the next crop lies the wait.</summary>
/// <param name="Sow">Earliest sowing day.</param>
/// <param name="SowBy">Latest sowing day that still gives the days it needs.</param>
/// <param name="Ready">Earliest day of useful growth when sown on the earliest day.</param>
/// <param name="Flowers">Earliest flowering when sown on the earliest day; null where no days are held or it flowers in spring.</param>
/// <param name="KillBy">Last day to end it.</param>
/// <param name="PlantFrom">First day for the next crop when it is ended on the last day.</param>
/// <param name="Fate">What winter does to it.</param>
/// <param name="DiesAbout">Day about which cold ends it; null when cold does not, or the day is not known.</param>
/// <param name="DaysNeeded">Days it needs to be useful, with source.</param>
/// <param name="DaysToFlower">Days to its first flowers; null when not held.</param>
/// <param name="Wait">Days between ending it and the next crop, with every reason.</param>
/// <param name="Warmth">Degree-days from sowing to ending, or to the frost that ends it; null without temperatures.</param>
public sealed record CoverWindow(
    DateOnly Sow,
    DateOnly SowBy,
    DateOnly Ready,
    DateOnly? Flowers,
    DateOnly KillBy,
    DateOnly PlantFrom,
    WinterFate Fate,
    DateOnly? DiesAbout,
    CoverCropValue DaysNeeded,
    CoverCropValue? DaysToFlower,
    PlantBack Wait,
    DegreeDaySum? Warmth);
