namespace SoilAdvisor.Api.Catalogues;

/// <summary>One scale of a guide: what it rates, by which method, for whom, and its classes.</summary>
internal sealed record GuideScaleEntry(
    string Analyte, string Method, string Unit, string? CropGroup, IReadOnlyList<string> Textures, string? Subregion, IReadOnlyList<string> Conditions, string? Timing, string? Depth,
    IReadOnlyList<GuideClassEntry> Classes);
