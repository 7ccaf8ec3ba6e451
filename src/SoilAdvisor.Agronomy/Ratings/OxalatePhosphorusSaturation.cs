namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Oxalate phosphorus over half of oxalate aluminium and iron, by moles, in percent: the degree of saturation used in Europe.</summary>
public readonly struct OxalatePhosphorusSaturation : ISoilIndex;
