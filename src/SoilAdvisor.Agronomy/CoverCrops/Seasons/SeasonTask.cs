namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>One thing to do on one day.</summary>
/// <param name="Work">What.</param>
/// <param name="Day">When.</param>
/// <param name="Text">In one plain sentence.</param>
public sealed record SeasonTask(SeasonWork Work, DateOnly Day, string Text);
