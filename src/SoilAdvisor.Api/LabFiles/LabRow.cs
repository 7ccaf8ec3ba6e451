namespace SoilAdvisor.Api.LabFiles;

/// <summary>One row of a lab file with the line it starts on.</summary>
internal sealed record LabRow(int Line, IReadOnlyList<string> Cells);
