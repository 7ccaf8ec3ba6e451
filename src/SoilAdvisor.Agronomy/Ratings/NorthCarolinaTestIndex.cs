namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>The index in which the North Carolina laboratory reports an extracted nutrient.</summary>
public readonly struct NorthCarolinaTestIndex : ISoilIndex;
