namespace SoilAdvisor.Api.YearsAhead;

/// <summary>A soil test as it is expected to read after so many seasons; 0 is today's.</summary>
internal sealed record YearAnswer(int Year, decimal Low, decimal Likely, decimal High);
