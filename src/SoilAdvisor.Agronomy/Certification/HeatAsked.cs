namespace SoilAdvisor.Agronomy.Certification;

/// <summary>How hot a rule wants a compost pile, for how long.</summary>
/// <param name="Lowest">Every reading of a day that counts is at least this.</param>
/// <param name="Highest">And at most this; null where the rule prints no ceiling.</param>
/// <param name="Days">Days that must count: at least 1.</param>
/// <param name="InARow">Whether they must follow each other.</param>
/// <param name="Turnings">Turnings within those days; 0 where none are asked.</param>
public sealed record HeatAsked(PileTemperature Lowest, PileTemperature? Highest, int Days, DaysInARow InARow, int Turnings);
