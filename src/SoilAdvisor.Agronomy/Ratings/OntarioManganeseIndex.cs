namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Manganese index of Ontario, from phosphoric-acid manganese by volume and pH.</summary>
public readonly struct OntarioManganeseIndex : ISoilIndex;
