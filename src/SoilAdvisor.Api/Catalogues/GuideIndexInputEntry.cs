namespace SoilAdvisor.Api.Catalogues;

/// <summary>A reading that an index needs: its letter in the formula, what was measured, by which method, in which unit.</summary>
internal sealed record GuideIndexInputEntry(string Symbol, string Analyte, string Method, string Unit);
