namespace SoilAdvisor.Reports.Rulers;

/// <summary>One class on a ruler: its place from 0 to 1, its printed name (empty for a gap of a reference range), and whether the guide wants a soil to be there.</summary>
internal sealed record RulerClass(string Name, int Index, double Start, double End, bool IsTarget);
