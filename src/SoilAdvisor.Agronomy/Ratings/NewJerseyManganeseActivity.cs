namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Manganese activity by New Jersey, from Mehlich-3 manganese by mass and pH.</summary>
public readonly struct NewJerseyManganeseActivity : ISoilIndex;
