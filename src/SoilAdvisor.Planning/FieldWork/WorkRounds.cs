using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>
/// What falls due within a week is done in one round, by the earliest of its last days: nobody walks to every bed on its own last day. A
/// last day may always be met early; a week early loses little. The week is ours.
/// </summary>
internal static class WorkRounds
{
    private const int Days = 7;

    /// <summary>Said with every plan that has more than one day of work.</summary>
    public static Assumption Said { get; } = new("work-in-rounds", "What falls due within one week is put into one round of work, by the earliest of its last days.", Citation.OurJudgement);

    /// <summary>The same materials with the last day of their round.</summary>
    /// <param name="carried">What every bed gets.</param>
    public static IReadOnlyList<CarriedMaterial> Of(IReadOnlyList<CarriedMaterial> carried)
    {
        var rounds = new SortedDictionary<DateOnly, DateOnly>();
        var (start, first) = (default(DateOnly), true);
        foreach (var day in carried.Select(c => c.By).OfType<DateOnly>().Distinct().Order())
        {
            if (first || day.DayNumber - start.DayNumber >= Days)
            {
                (start, first) = (day, false);
            }

            rounds[day] = start;
        }

        return [.. carried.Select(c => c.By is { } day ? c with { By = rounds[day] } : c)];
    }
}
