namespace SoilAdvisor.Api.YearsAhead;

/// <summary>Where the guide's target lies, in the unit of the years; an open end is left out.</summary>
internal sealed record TargetSpanAnswer(decimal? Lower, decimal? Upper);
