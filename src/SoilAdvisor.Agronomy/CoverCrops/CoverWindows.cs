using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>
/// Whether a cover crop has the days it needs in a gap and when to sow and end it. What frost kills stands between frosts; what lives through winter is
/// sown in time before it; the wait before the next crop stays free.
/// </summary>
internal sealed class CoverWindows(CoverCropQuestion question, CoverCropTables tables)
{
    // Small grains can be sown about a month later than clovers and vetches (common practice).
    private const int GrainsLater = 30;

    // Ours: a winter cover is sown from ten weeks before the first frost on; a cool one in spring from six weeks before the last.
    private const int EarliestBeforeFrost = 70;
    private const int SpringBeforeLastFrost = 42;

    // Ours: a cool annual grows on slowly for about a month after the first frost.
    private const int SlowGrowth = 30;

    private const int DaysOfAYear = 365;

    private readonly FrostSeason frost = FrostSeason.Of(question.Climate);

    private Gap Gap => question.Gap;

    /// <summary>The window with the reasons it brings, or the reason why there is none.</summary>
    public (CoverWindow? Window, IReadOnlyList<CoverCropReason> Reasons, CoverCropReason? Against) Of(CoverCrop cover)
    {
        if (cover.LivesLonger && Gap.Days < DaysOfAYear)
        {
            return None("days", $"{cover.Name} lives longer than one season; the gap is {Gap.Days} days.", cover.Source);
        }

        var days = Days(cover);
        if (cover.IsFrostTender)
        {
            return days is null ? NoDays(cover) : BetweenFrosts(cover, days);
        }

        if (cover.Overwinters && NewYear() is { } newYear)
        {
            var (fate, why, source) = WinterFates.Of(cover, question.Climate);
            if (fate != WinterFate.DiesInWinter)
            {
                return ThroughWinter(cover, days, newYear, (fate, why, source));
            }
        }

        return days is null ? NoDays(cover) : CoolAnnual(cover, days);
    }

    private (CoverWindow?, IReadOnlyList<CoverCropReason>, CoverCropReason?) BetweenFrosts(CoverCrop cover, CoverCropValue days)
    {
        var needed = Least(days);
        var wait = Wait(cover, byWinter: false);
        var lastKill = Gap.To.AddDays(-wait.Days);
        var spans = new List<(DateOnly From, DateOnly To, bool ByFrost)>();
        for (var year = Gap.From.Year; year <= Gap.To.Year; year++)
        {
            var (from, frostOn) = (Later(Gap.From, frost.LastSpringOf(year)), frost.FirstFallOf(year));
            // The next crop after winter needs no wait: what frost killed has rotted by then.
            var byFrost = frostOn < lastKill || (frostOn <= Gap.To && Gap.To.Year > year);
            var to = byFrost ? frostOn : lastKill;
            if (from <= to)
            {
                spans.Add((from, to, byFrost));
            }
        }

        var fitting = spans.Where(s => s.To.DayNumber - s.From.DayNumber >= needed).ToList();
        if (fitting.Count == 0)
        {
            var longest = spans.Select(s => s.To.DayNumber - s.From.DayNumber).DefaultIfEmpty(0).Max();
            return None("days", $"Frost kills it, and between frosts the gap leaves {longest} days{Kept(wait)}; it needs {needed}.", days.Source);
        }

        var (sow, end, endsByFrost) = fitting[0];
        var diesIn = endsByFrost ? end : (DateOnly?)null;
        var pastWinter = endsByFrost && Gap.To.Year > end.Year;
        var window = Build(cover, sow, end, days, endsByFrost ? WinterFate.DiesOfFrost : WinterFate.NoWinter, diesIn, pastWinter ? Wait(cover, byWinter: true) : wait);
        return (window, [Enough(days, end.DayNumber - sow.DayNumber), .. endsByFrost ? new[] { FrostEnds(cover, end) } : []], null);
    }

    private (CoverWindow?, IReadOnlyList<CoverCropReason>, CoverCropReason?) ThroughWinter(CoverCrop cover, CoverCropValue? days, DateOnly newYear, (WinterFate Fate, string Why, Citation Source) winter)
    {
        var firstFall = frost.FirstFallOf(newYear.Year - 1);
        var printed = cover.ValueOf("sow-before-first-frost");
        var (latest, source) = printed is { Least: { } least }
            ? (firstFall.AddDays(-(int)least), printed.Source)
            : (cover.Family == CoverCrop.Grasses ? firstFall.AddDays(GrainsLater) : firstFall, Citation.CommonPractice);
        if (Gap.From > latest)
        {
            return None("winter", $"It must be sown by about {PlainNumber.Date(latest)} to stand the winter; the bed is free from {PlainNumber.Date(Gap.From)}.", source);
        }

        var wait = Wait(cover, byWinter: false);
        var end = Gap.To.AddDays(-wait.Days);
        var spring = frost.LastSpringOf(newYear.Year).AddDays(-SpringBeforeLastFrost);
        if (end < spring)
        {
            return None("winter", $"It grows mainly in spring; it would have to end on {PlainNumber.Date(end)}, before {PlainNumber.Date(spring)}{Kept(wait)}.", Citation.OurJudgement);
        }

        var sow = Later(Gap.From, firstFall.AddDays(-EarliestBeforeFrost));
        var needed = days ?? new CoverCropValue("days-to-use", null, null, null, "", "sown in late summer or fall, grown on and ended in spring", Citation.CommonPractice, null);
        var reasons = new List<CoverCropReason>
        {
            Reason("winter", "Sown in late summer or fall, it covers the soil through winter and grows on in spring.", 2, Citation.CommonPractice),
            Reason("winter", winter.Why, winter.Fate == WinterFate.Lives ? 0 : -1, winter.Source),
        };
        if (printed is { Most: { } early } && sow > firstFall.AddDays(-(int)early))
        {
            reasons.Add(Reason("frost", $"Best sown {printed.Shown} days before the first frost; the bed is free {firstFall.DayNumber - Gap.From.DayNumber} days before it.", -1, printed.Source));
        }

        return (Build(cover, sow, end, needed, winter.Fate, null, wait), reasons, null);
    }

    private (CoverWindow?, IReadOnlyList<CoverCropReason>, CoverCropReason?) CoolAnnual(CoverCrop cover, CoverCropValue days)
    {
        var needed = Least(days);
        var sow = Gap.From;
        var dead = (From: frost.FirstFallOf(sow.Year), To: frost.LastSpringOf(sow.Year + 1).AddDays(-SpringBeforeLastFrost));
        var springThisYear = frost.LastSpringOf(sow.Year).AddDays(-SpringBeforeLastFrost);
        if (sow < springThisYear && springThisYear < dead.From)
        {
            sow = springThisYear;
        }
        else if (sow > dead.From)
        {
            sow = dead.To;
        }

        var (fate, why, source) = WinterFates.Of(cover, question.Climate);
        var firstFall = frost.FirstFallOf(sow.Year);
        var winterAhead = Gap.To >= new DateOnly(sow.Year + 1, 1, 1);
        var diesInWinter = winterAhead && fate == WinterFate.DiesInWinter;
        var wait = Wait(cover, diesInWinter);
        var end = Gap.To.AddDays(-wait.Days);
        var growsUntil = sow <= firstFall && fate != WinterFate.Lives ? Earlier(end, firstFall.AddDays(SlowGrowth)) : end;
        var free = growsUntil.DayNumber - sow.DayNumber;
        if (cover.ValueOf("sow-before-first-frost") is { Least: { } before } printed && winterAhead && sow > firstFall.AddDays(-(int)before))
        {
            return None("frost", $"It is sown at least {before} days before the first frost; the bed is free {firstFall.DayNumber - sow.DayNumber} days before it.", printed.Source);
        }

        if (free < needed && growsUntil < end)
        {
            return None("days", $"It needs {needed} days; from {PlainNumber.Date(sow)} to about {SlowGrowth} days after the first frost there are {Math.Max(free, 0)}.", days.Source);
        }

        if (free < needed)
        {
            return sow > Gap.From
                ? None("days", $"Sown from {PlainNumber.Date(sow)}, when the soil warms, the gap leaves {Math.Max(free, 0)} days{Kept(wait)}; it needs {needed}.", days.Source)
                : None("days", $"It needs {needed} days; the gap leaves {Math.Max(free, 0)}{Kept(wait)}.", days.Source);
        }

        var reasons = new List<CoverCropReason> { Enough(days, free) };
        if (sow <= firstFall && sow.AddDays(needed) > firstFall)
        {
            reasons.Add(Reason("frost", $"The first frost, about {PlainNumber.Date(firstFall)}, comes before its {needed} days are up.", -1, days.Source));
        }

        if (winterAhead)
        {
            reasons.Add(Reason("winter", why, 0, source));
        }

        if (sow.Month == 6 || (sow.Month == 7 && sow.Day <= 15))
        {
            reasons.Add(Reason("season", "A cool-season plant: in summer heat it flowers early and stays small.", -1, Citation.CommonPractice));
        }

        var dies = diesInWinter && cover.Kill is { } kill ? WinterFates.FirstNightAtOrBelow(kill, question.Climate, firstFall) : null;
        return (Build(cover, sow, end, days, winterAhead ? fate : WinterFate.NoWinter, dies, wait), reasons, null);
    }

    private CoverWindow Build(CoverCrop cover, DateOnly sow, DateOnly end, CoverCropValue days, WinterFate fate, DateOnly? dies, PlantBack wait)
    {
        var flower = cover.ValueOf("days-to-flower") is { Figure: not null } held && !(cover.Overwinters && fate is WinterFate.Lives or WinterFate.Uncertain) ? held : null;
        var killBy = end;
        if (cover.ValueOf("days-from-flower-to-end") is { Most: { } afterFlower })
        {
            var seeds = sow.AddDays((int)(Math.Max(days.Most ?? 0, flower?.Least ?? 0) + afterFlower));
            killBy = Earlier(end, seeds);
        }

        var growsUntil = Earlier(killBy, dies ?? killBy);
        return new CoverWindow(
            sow,
            Later(sow, end.AddDays(-LeastOrZero(days))),
            sow.AddDays(LeastOrZero(days)),
            flower is { Least: { } first } ? sow.AddDays((int)first) : null,
            killBy,
            killBy.AddDays(wait.Days),
            fate,
            dies,
            days,
            flower,
            wait,
            question.Climate.Temperatures is { } temperatures ? DegreeDayFormulas.Over(sow, growsUntil, temperatures, question.Climate.Basis) : null);
    }

    private CoverCropReason FrostEnds(CoverCrop cover, DateOnly day) =>
        Reason("frost", $"The first frost, about {PlainNumber.Date(day)}, ends it.", 0, cover.Kill?.Source ?? Citation.CommonPractice);

    private CoverCropReason Enough(CoverCropValue days, int free) => free >= days.Most
        ? Reason("days", $"Needs {days.Shown} days; the gap gives {free}.", 2, days.Source)
        : Reason("days", $"Needs {days.Shown} days; the gap gives {free}, the short end.", 1, days.Source);

    private (CoverWindow?, IReadOnlyList<CoverCropReason>, CoverCropReason?) NoDays(CoverCrop cover) =>
        None("days", $"No number of days is held for {cover.Name}: whether {Gap.Days} days are enough cannot be said.", cover.Source);

    private (CoverWindow?, IReadOnlyList<CoverCropReason>, CoverCropReason?) None(string kind, string why, Citation source) => (null, [], Reason(kind, why, 0, source));

    private CoverCropReason Reason(string kind, string text, double grade, Citation source) => new(kind, text, grade, question.Weights.Of(kind), source);

    private PlantBack Wait(CoverCrop cover, bool byWinter) => PlantBacks.For(cover, question.NextCrop, byWinter, tables.PlantBack);

    private static string Kept(PlantBack wait) => wait.Days > 0 ? $" after {wait.Days} days are kept before the next crop" : "";

    private DateOnly? NewYear() => new DateOnly(Gap.From.Year + 1, 1, 1) is var day && day <= Gap.To ? day : null;

    private static CoverCropValue? Days(CoverCrop cover) =>
        cover.AllOf("days-to-use").FirstOrDefault(v => v.Figure is not null) ?? cover.AllOf("days-to-flower").FirstOrDefault(v => v.Figure is not null);

    private static int Least(CoverCropValue days) => (int)Math.Ceiling(days.Least!.Value);

    private static int LeastOrZero(CoverCropValue days) => (int)Math.Ceiling(days.Least ?? 0);

    private static DateOnly Later(DateOnly a, DateOnly b) => a > b ? a : b;

    private static DateOnly Earlier(DateOnly a, DateOnly b) => a < b ? a : b;
}
