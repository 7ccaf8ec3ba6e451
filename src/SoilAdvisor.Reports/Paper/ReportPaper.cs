namespace SoilAdvisor.Reports.Paper;

/// <summary>A whole report before any markup.</summary>
internal sealed record ReportPaper(string Title, IReadOnlyList<Block> Blocks);
