namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Mehlich-3 phosphorus over aluminium and iron, by moles: a ratio near 0.1, not a percent.</summary>
public readonly struct PhosphorusSaturationRatio : ISoilIndex;
