namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Zinc index of Ontario, from DTPA zinc by volume and pH.</summary>
public readonly struct OntarioZincIndex : ISoilIndex;
