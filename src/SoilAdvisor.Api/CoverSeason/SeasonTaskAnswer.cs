namespace SoilAdvisor.Api.CoverSeason;

/// <summary>One thing to do on one day: sow, mow, kill or plant.</summary>
internal sealed record SeasonTaskAnswer(string Work, string Day, string Text);
