using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Climate;

/// <summary>
/// The frost dates that are used: as given; else from monthly lows, as long as the average night is below 40 °F; else 15 May and 30 September.
/// What was not given is an assumption, and it errs to a short season.
/// </summary>
internal sealed class FrostSeason
{
    private const double NightsWithFrostBelow = 40;
    private static readonly (int Month, int Day) AssumedLastSpring = (5, 15);
    private static readonly (int Month, int Day) AssumedFirstFall = (9, 30);

    private readonly (int Month, int Day) lastSpring;
    private readonly (int Month, int Day) firstFall;

    private FrostSeason((int, int) lastSpring, (int, int) firstFall, IReadOnlyList<Assumption> assumptions) =>
        (this.lastSpring, this.firstFall, Assumptions) = (lastSpring, firstFall, assumptions);

    public IReadOnlyList<Assumption> Assumptions { get; }

    public static FrostSeason Of(FarmClimate climate)
    {
        var (spring, fall) = (MonthAndDay(climate.Frost?.LastSpring), MonthAndDay(climate.Frost?.FirstFall));
        if (spring is { } s && fall is { } f)
        {
            return new(s, f, []);
        }

        var missing = (spring, fall) switch
        {
            (null, null) => "Your frost dates were not given",
            (null, _) => "Your last spring frost was not given",
            _ => "Your first fall frost was not given",
        };
        var fromNights = climate.Temperatures?.Normals is { HasExtremes: true } normals ? FromNights(normals) : (((int, int), (int, int))?)null;
        var (assumedSpring, assumedFall) = fromNights ?? (AssumedLastSpring, AssumedFirstFall);
        var taken = (spring, fall) switch
        {
            (null, null) => $"{Words(assumedSpring)} and {Words(assumedFall)} were taken",
            (null, _) => $"{Words(assumedSpring)} was taken",
            _ => $"{Words(assumedFall)} was taken",
        };
        var why = fromNights is null ? "a short season" : $"frost is reckoned with while the average night is below {PlainNumber.Of(NightsWithFrostBelow)} °F";
        return new(spring ?? assumedSpring, fall ?? assumedFall, [new Assumption("frost-dates-assumed", $"{missing}: {taken} ({why}). Give your own.", fromNights is null ? Citation.CommonPractice : Citation.OurJudgement)]);
    }

    public DateOnly LastSpringOf(int year) => In(year, lastSpring);

    public DateOnly FirstFallOf(int year) => In(year, firstFall);

    // A year without a leap day; the coldest half of the year lies around New Year.
    private static ((int Month, int Day) Spring, (int Month, int Day) Fall) FromNights(MonthlyNormals normals)
    {
        const int Year = 2001;
        bool IsCold(DateOnly day) => normals.On(day).Low.DegreesFahrenheit < NightsWithFrostBelow;
        var firstHalf = Enumerable.Range(0, 181).Select(i => new DateOnly(Year, 1, 1).AddDays(i)).ToList();
        var secondHalf = Enumerable.Range(0, 184).Select(i => new DateOnly(Year, 7, 1).AddDays(i)).ToList();
        var spring = firstHalf.LastOrDefault(IsCold, new DateOnly(Year, 1, 1));
        var fall = secondHalf.FirstOrDefault(IsCold, new DateOnly(Year, 12, 31));
        return ((spring.Month, spring.Day), (fall.Month, fall.Day));
    }

    private static (int, int)? MonthAndDay(DateOnly? day) => day is { } d ? (d.Month, d.Day) : null;

    private static string Words((int Month, int Day) day) => PlainNumber.DayOfYear(In(2028, day));

    private static DateOnly In(int year, (int Month, int Day) on) =>
        new(year, on.Month, Math.Min(on.Day, DateTime.DaysInMonth(year, on.Month)));
}
