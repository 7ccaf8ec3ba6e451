namespace SoilAdvisor.Reports.Rulers;

/// <summary>A limit of the guide on a ruler: place from 0 to 1, and the limit in the scale's unit.</summary>
internal sealed record RulerMark(double Place, double Limit);
