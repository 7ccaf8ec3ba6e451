namespace SoilAdvisor.Reports.Rulers;

/// <summary>A mark with its number: a limit of the guide, or a round number between the limits. Place from 0 to 1.</summary>
internal sealed record RulerMark(double Place, double Number, bool IsLimit);
