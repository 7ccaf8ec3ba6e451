namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>An index computed from several readings, by name. A value of one index is not a value of another.</summary>
public interface ISoilIndex;
