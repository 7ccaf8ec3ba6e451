using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Whether a cover crop has the days it needs in a gap, between frosts if frost kills it, and when to sow and end it.</summary>
internal sealed record CoverCropFit(DateOnly Sow, DateOnly KillBy, CoverCropValue DaysNeeded, IReadOnlyList<CoverCropReason> Reasons)
{
    // Time for residue to settle before the next crop: two to three weeks (common practice).
    private const int WaitAfterKilling = 14;

    // Small grains can be sown about a month later than clovers and vetches (common practice).
    private const int GrainsLater = 30;

    private static readonly (int Month, int Day) SpringGrowthBy = (4, 1);
    private static readonly (int Month, int Day) FallSowingFrom = (8, 1);

    /// <summary>The fit, or the reason why there is none.</summary>
    public static (CoverCropFit? Fit, CoverCropReason? Against) Of(CoverCrop cover, Gap gap, FrostDates? frost)
    {
        if (LivesLonger(cover) && gap.Days < 365)
        {
            return (null, new($"{cover.Name} lives longer than one season; the gap is {gap.Days} days.", 0, cover.Source));
        }

        var days = Days(cover);
        if (cover.Season == "warm")
        {
            return days is null ? (null, NoDays(cover, gap)) : BetweenFrosts(cover, gap, frost, days);
        }

        if (Overwinters(cover) && WinterIn(gap) is { } newYear)
        {
            return ThroughWinter(cover, gap, frost, days, newYear);
        }

        return days is null ? (null, NoDays(cover, gap)) : Cool(cover, gap, frost, days);
    }

    private static (CoverCropFit?, CoverCropReason?) BetweenFrosts(CoverCrop cover, Gap gap, FrostDates? frost, CoverCropValue days)
    {
        var dates = frost ?? new FrostDates(null, null);
        var needed = Least(days);
        var frostFree = Enumerable.Range(gap.From.Year, gap.To.Year - gap.From.Year + 1)
            .Select(year => (From: Later(gap.From, dates.LastSpringOf(year)), To: Earlier(gap.To, dates.FirstFallOf(year))))
            .Where(w => w.From <= w.To)
            .ToList();
        var longest = frostFree.Select(w => w.To.DayNumber - w.From.DayNumber).DefaultIfEmpty(0).Max();
        var given = dates.SayAssumed();
        if (longest < needed)
        {
            return (null, new($"Frost kills it, and between frosts the gap leaves {longest} days; it needs {needed}.{given}", 0, days.Source));
        }

        var (from, to) = frostFree.First(w => w.To.DayNumber - w.From.DayNumber >= needed);
        var reasons = new List<CoverCropReason> { Enough(days, to.DayNumber - from.DayNumber) };
        if (given.Length > 0)
        {
            reasons.Add(new($"Frost kills it.{given}", 0, Citation.CommonPractice));
        }

        return Ended(from, to, gap, days, reasons);
    }

    private static (CoverCropFit?, CoverCropReason?) ThroughWinter(CoverCrop cover, Gap gap, FrostDates? frost, CoverCropValue? days, DateOnly newYear)
    {
        var firstFall = (frost ?? new FrostDates(null, null)).FirstFallOf(newYear.Year - 1);
        var latest = cover.Family == "Poaceae" ? firstFall.AddDays(GrainsLater) : firstFall;
        if (gap.From > latest)
        {
            return (null, new($"It must be sown by about {PlainNumber.Date(latest)} to stand the winter; the bed is free from {PlainNumber.Date(gap.From)}.", 0, Citation.CommonPractice));
        }

        var spring = new DateOnly(newYear.Year, SpringGrowthBy.Month, SpringGrowthBy.Day);
        if (gap.To < spring)
        {
            return (null, new($"It grows mainly in spring; the gap ends on {PlainNumber.Date(gap.To)}, before {PlainNumber.Date(spring)}.", 0, Citation.CommonPractice));
        }

        var sow = Later(gap.From, new DateOnly(newYear.Year - 1, FallSowingFrom.Month, FallSowingFrom.Day));
        var needed = days ?? new CoverCropValue("days-to-use", null, null, null, "", "Sown in late summer or fall, grown on and ended in spring.", Citation.CommonPractice, null);
        var reasons = new List<CoverCropReason> { new("Sown in late summer or fall, it covers the soil through winter and grows on in spring.", 2, Citation.CommonPractice) };
        if (cover.Values.FirstOrDefault(v => v.Property == "frost" && IsTender(v.Text)) is { } frostLimit)
        {
            reasons.Add(new($"It may not live through a cold winter: {frostLimit.Text}.", -2, frostLimit.Source));
        }

        return Ended(sow, gap.To, gap, needed, reasons);
    }

    private static (CoverCropFit?, CoverCropReason?) Cool(CoverCrop cover, Gap gap, FrostDates? frost, CoverCropValue days)
    {
        var needed = Least(days);
        if (gap.Days < needed)
        {
            return (null, new($"It needs {needed} days; the gap gives {gap.Days}.", 0, days.Source));
        }

        var reasons = new List<CoverCropReason> { Enough(days, gap.Days) };
        if (frost?.FirstFall is not null)
        {
            var first = frost.FirstFallOf(gap.From.Year);
            if (gap.From > first)
            {
                return (null, new($"It must grow before winter; the bed is free from {PlainNumber.Date(gap.From)}, after the first frost of {PlainNumber.Date(first)}.", 0, Citation.CommonPractice));
            }

            if (gap.From.AddDays(needed) > first)
            {
                reasons.Add(new($"The first frost, about {PlainNumber.Date(first)}, comes before its {needed} days are up.", -1, days.Source));
            }
        }

        if (WinterIn(gap) is not null)
        {
            reasons.Add(new("Where winter is cold it ends there; the dead cover protects the soil until spring.", 0, Citation.CommonPractice));
        }

        if (gap.From.Month == 6 || (gap.From.Month == 7 && gap.From.Day <= 15))
        {
            reasons.Add(new("A cool-season plant: in summer heat it flowers early and stays small.", -1, Citation.CommonPractice));
        }

        return Ended(gap.From, gap.To, gap, days, reasons);
    }

    private static (CoverCropFit?, CoverCropReason?) Ended(DateOnly sow, DateOnly lastGrowth, Gap gap, CoverCropValue days, List<CoverCropReason> reasons)
    {
        var ready = sow.AddDays(LeastOrZero(days));
        var killBy = Later(Earlier(lastGrowth, gap.To.AddDays(-WaitAfterKilling)), ready);
        var wait = gap.To.DayNumber - killBy.DayNumber;
        if (wait < WaitAfterKilling)
        {
            reasons.Add(new($"Only {wait} {(wait == 1 ? "day stays" : "days stay")} between ending it and the end of the gap; two to three weeks are usual, longer before small seed.", -1, Citation.CommonPractice));
        }

        return (new CoverCropFit(sow, killBy, days, reasons), null);
    }

    private static CoverCropReason Enough(CoverCropValue days, int free)
    {
        var most = days.High ?? days.Value ?? days.Low!.Value;
        return free >= most
            ? new($"Needs {CoverCropPhosphorus.Range(days)} days; the gap gives {free}.", 2, days.Source)
            : new($"Needs {CoverCropPhosphorus.Range(days)} days; the gap gives {free}, the short end.", 1, days.Source);
    }

    private static CoverCropReason NoDays(CoverCrop cover, Gap gap) =>
        new($"No number of days is held for {cover.Name}: whether {gap.Days} days are enough cannot be said.", 0, cover.Source);

    private static CoverCropValue? Days(CoverCrop cover) =>
        cover.Values.FirstOrDefault(v => v.Property == "days-to-use" && (v.Low ?? v.Value) is not null)
        ?? cover.Values.FirstOrDefault(v => v.Property == "days-to-flower" && (v.Low ?? v.Value) is not null);

    private static int Least(CoverCropValue days) => (int)Math.Ceiling(days.Low ?? days.Value!.Value);

    private static int LeastOrZero(CoverCropValue days) => (int)Math.Ceiling(days.Low ?? days.Value ?? 0);

    private static bool LivesLonger(CoverCrop cover) =>
        cover.Season != "warm" && (cover.LifeCycle.Contains("perennial", StringComparison.Ordinal) || cover.LifeCycle.StartsWith("biennial", StringComparison.Ordinal));

    private static bool Overwinters(CoverCrop cover) => cover.LifeCycle.Contains("winter", StringComparison.Ordinal) || LivesLonger(cover);

    private static bool IsTender(string? frost) =>
        frost is not null && (frost.Contains("kill", StringComparison.Ordinal) || frost.Contains("die", StringComparison.Ordinal) || frost.Contains("fails", StringComparison.Ordinal));

    private static DateOnly? WinterIn(Gap gap)
    {
        var newYear = new DateOnly(gap.From.Year + 1, 1, 1);
        return newYear <= gap.To ? newYear : null;
    }

    private static DateOnly Later(DateOnly a, DateOnly b) => a > b ? a : b;

    private static DateOnly Earlier(DateOnly a, DateOnly b) => a < b ? a : b;
}
