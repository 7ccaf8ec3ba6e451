namespace SoilAdvisor.Agronomy.Certification;

/// <summary>One day of a temperature log.</summary>
/// <param name="Day">The day.</param>
/// <param name="Lowest">Lowest reading of the day; with one reading the same as the highest.</param>
/// <param name="Highest">Highest reading of the day.</param>
public sealed record LoggedDay(DateOnly Day, PileTemperature Lowest, PileTemperature Highest);
