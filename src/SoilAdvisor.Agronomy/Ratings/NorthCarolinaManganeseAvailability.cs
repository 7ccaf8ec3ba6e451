namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Manganese availability by North Carolina, from its manganese index and pH.</summary>
public readonly struct NorthCarolinaManganeseAvailability : ISoilIndex;
