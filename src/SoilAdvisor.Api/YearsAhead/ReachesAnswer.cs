using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>A limit of the guide and the years until the test reaches it; a missing number means never, or perhaps never.</summary>
internal sealed record ReachesAnswer(string What, Quantity Level, decimal? Years, decimal? Earliest, decimal? Latest);
