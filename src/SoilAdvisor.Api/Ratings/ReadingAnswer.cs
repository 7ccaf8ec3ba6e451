namespace SoilAdvisor.Api.Ratings;

/// <summary>A value as the laboratory reported it.</summary>
internal sealed record ReadingAnswer(decimal Value, string? Comparator, string Unit, string? Extractant, string? Detection, string? Basis, string? Method);
