namespace SoilAdvisor.Api.Ratings;

/// <summary>One class of the scale with its printed limits; a missing limit is open.</summary>
internal sealed record ScaleClassAnswer(string Class, string Standing, bool StandingIsOurs, decimal? Lower, bool? LowerIncluded, decimal? Upper, bool? UpperIncluded);
