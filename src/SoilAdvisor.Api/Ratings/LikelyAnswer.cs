namespace SoilAdvisor.Api.Ratings;

/// <summary>Between which values the true value of the ground likely lies, in the scale's unit, and with what probability it lies within.</summary>
internal sealed record LikelyAnswer(decimal Low, decimal High, string Unit, decimal Share);
