namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Mehlich-3 phosphorus over aluminium, by mass, in percent: the index of Quebec.</summary>
public readonly struct PhosphorusToAluminium : ISoilIndex;
