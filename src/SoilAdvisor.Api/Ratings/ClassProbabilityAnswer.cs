namespace SoilAdvisor.Api.Ratings;

/// <summary>How likely the ground belongs to a class, from 0 to 1. A result "less than" or "more than" gives bounds and no single probability.</summary>
internal sealed record ClassProbabilityAnswer(string Class, string Standing, decimal? Probability, decimal? AtLeast, decimal? AtMost);
