namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>Which season after a spreading a planting stands in. What was spread up to nine months before it belongs to its own season: ours, said.</summary>
public static class SeasonOfSpreading
{
    /// <summary>Days before a planting in which a spreading still belongs to its season.</summary>
    public const int OwnSeasonDays = 270;

    /// <summary>1 for the season of the spreading itself, 2 for the next, and so on.</summary>
    /// <param name="spread">Day of spreading.</param>
    /// <param name="planted">Day of planting, or of the plan where that is not known.</param>
    public static int Of(DateOnly spread, DateOnly planted) =>
        planted.DayNumber - spread.DayNumber is var days && days <= OwnSeasonDays ? 1 : 2 + ((days - OwnSeasonDays - 1) / 365);
}
