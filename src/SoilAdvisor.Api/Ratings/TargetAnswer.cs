namespace SoilAdvisor.Api.Ratings;

/// <summary>Where the guide wants the soil to be, in the scale's unit; a missing limit is open.</summary>
internal sealed record TargetAnswer(decimal? Lower, decimal? Upper);
