namespace SoilAdvisor.Api.LabFiles;

/// <summary>A lab file as text, still to be split.</summary>
internal sealed record LabText(string Text);
