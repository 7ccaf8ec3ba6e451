namespace SoilAdvisor.Api.Ratings;

/// <summary>The guide's limits, in its unit, for the method it was calibrated for.</summary>
internal sealed record ScaleAnswer(string Unit, string Method, string? CropGroup, decimal? Cec, decimal Position, TargetAnswer? Target, IReadOnlyList<ScaleClassAnswer> Classes);
