namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Usual frost dates of the farm. Month and day count; the year is ignored.</summary>
/// <param name="LastSpring">Last frost in spring; null when not said.</param>
/// <param name="FirstFall">First frost in fall; null when not said.</param>
public sealed record FrostDates(DateOnly? LastSpring, DateOnly? FirstFall)
{
    // Used, and said, where the farm gave none: a short season of the northern temperate zone (common practice).
    private static readonly (int Month, int Day) AssumedLastSpring = (5, 15);
    private static readonly (int Month, int Day) AssumedFirstFall = (9, 30);

    internal DateOnly LastSpringOf(int year) => In(year, LastSpring is { } d ? (d.Month, d.Day) : AssumedLastSpring);

    internal DateOnly FirstFallOf(int year) => In(year, FirstFall is { } d ? (d.Month, d.Day) : AssumedFirstFall);

    internal string SayAssumed() => (LastSpring, FirstFall) switch
    {
        (null, null) => " Your frost dates were not given: 15 May and 30 September were taken.",
        (null, _) => " Your last spring frost was not given: 15 May was taken.",
        (_, null) => " Your first fall frost was not given: 30 September was taken.",
        _ => "",
    };

    private static DateOnly In(int year, (int Month, int Day) on) =>
        new(year, on.Month, Math.Min(on.Day, DateTime.DaysInMonth(year, on.Month)));
}
