using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>Says what a projection means: which limit is reached, when, or never with this plan.</summary>
internal sealed class OutlookWords(
    OutlookQuestion question,
    OutlookLimits limits,
    Projection projection,
    PlantNutrient nutrient,
    MassPerArea applied,
    MassPerArea once,
    MassPerArea removed,
    Citation movement)
{
    // Below it a plan counts as one without phosphorus: the trace that nitrogen materials may bring. Ours.
    private const double TracePoundsPerAcre = 5;
    private const string TurningPoint = "p-turning-point";

    private readonly List<Cited<string>> words = [];

    private string Name => nutrient == PlantNutrient.P2O5 ? "phosphate (P2O5)" : "potash (K2O)";

    public NutrientOutlook Outlook(IReadOnlyList<Assumption> assumptions, MassPerArea? toRaise, WorkingSheet? working)
    {
        Course();
        var reached = Reached(working);
        if (toRaise is { } pounds && pounds.PoundsPerAcre >= 0.5)
        {
            Say($"To lift the test to {Level(limits.TargetFrom!.Value)} takes about {PlainNumber.Of(pounds.PoundsPerAcre)} lb/acre of {Name} in all, beyond what the harvests take.", movement);
        }

        Drawdown(working);
        BelowTheTarget();
        return new NutrientOutlook(
            nutrient, question.Rating.Standing, projection, limits.TargetFrom, limits.TargetTo, applied, once, removed, reached, words,
            [.. assumptions, PlanRepeats, BandHolds]);
    }

    private static Assumption PlanRepeats { get; } = new(
        "plan-repeats",
        "The years ahead take this season's plan, crops and yields to repeat every year. Lime, and what was spread since the sample, count once. Leaching, erosion, irrigation and seed are left out.",
        Citation.OurJudgement);

    private static Assumption BandHolds { get; } = new(
        "band-of-years",
        "The band of the years ahead holds the true value four times in five: it adds the spread of the soil test, the ends of the analyses and how differently soils answer, as squares. The weather is not in it. Compare later tests of the same laboratory, method, season and depth only.",
        Citation.OurJudgement);

    private void Course()
    {
        var pace = projection.Pace.Likely.Value;
        var first = once.IsZero ? "" : $" Once only: {PlainNumber.Of(once.PoundsPerAcre)} lb/acre, since the sample or with the lime.";
        var course = projection.IsFlat ? "the test stays where it is" : $"the test {(pace > 0 ? "climbs" : "falls")} by about {PlainNumber.Of(Math.Abs(pace))} mg/kg a year";
        Say($"The plan spreads {PlainNumber.Of(applied.PoundsPerAcre)} lb/acre of {Name} a year, the harvests take {PlainNumber.Of(removed.PoundsPerAcre)} lb/acre: {course}.{first}", movement);
    }

    // The limit ahead: up to the target from below, down to it from above.
    private ReachedLevel? Reached(WorkingSheet? working)
    {
        var start = projection.Start.MilligramsPerKilogram;
        switch (question.Rating.Standing)
        {
            case Standing.Below when limits.TargetFrom is { } from:
                return Answer("where the target begins", from, working, projection.Pace.Likely.Value <= 0 ? "spread more than the harvests take" : null);
            case Standing.Stop when limits.Stop is { } stop && start > stop.MilligramsPerKilogram && limits.TargetTo is null:
                return Answer("where the stop limit ends", stop, working, "spread less than the harvests take");
            case Standing.Stop or Standing.Above when limits.TargetTo is { } to:
                if (question.Rating.Standing == Standing.Stop && limits.Stop is { } end && start > end.MilligramsPerKilogram)
                {
                    Answer("where the stop limit ends", end, working, "spread less than the harvests take");
                }

                return Answer("where the target ends", to, working, "spread less than the harvests take");
            case Standing.Target:
                return Leaves(working);
            default:
                return null;
        }
    }

    private ReachedLevel Answer(string what, SoilConcentration level, WorkingSheet? working, string? instead)
    {
        var by = projection.YearsTo(level, working);
        Say(
            by.Likely is { } years
                ? $"It reaches {Level(level)}, {what}, {When(years)} ({Range(by)})."
                : $"It never reaches {Level(level)}, {what}, with this plan{(instead is null ? "" : $": {instead}")}.",
            Citation.OurArithmetic);
        return new ReachedLevel(what, level, by);
    }

    private ReachedLevel? Leaves(WorkingSheet? working)
    {
        var pace = projection.Pace.Likely.Value;
        if (projection.IsFlat || (pace > 0 ? limits.TargetTo : limits.TargetFrom) is not { } limit)
        {
            Say("It stays within the guide's target.", Citation.OurArithmetic);
            return null;
        }

        var what = pace > 0 ? "where the target ends" : "where the target begins";
        var by = projection.YearsTo(limit, working);
        Say(
            by.Likely is { } years && years <= question.Years
                ? $"It leaves the guide's target at {Level(limit)}, {what}, {When(years)} ({Range(by)})."
                : $"It stays within the guide's target for the {question.Years} years shown.",
            Citation.OurArithmetic);
        return new ReachedLevel(what, limit, by);
    }

    // What fields without phosphorus did says more than a straight line, where the plan spreads none.
    private void Drawdown(WorkingSheet? working)
    {
        if (nutrient != PlantNutrient.P2O5
            || question.Rating.Standing is not (Standing.Above or Standing.Stop)
            || applied.PoundsPerAcre > TracePoundsPerAcre
            || (limits.TargetTo ?? limits.Stop) is not { MilligramsPerKilogram: > 0 } level
            || projection.Start.MilligramsPerKilogram <= level.MilligramsPerKilogram
            || question.Movements.Drawdown is not { Low: { } slow, High: { } fast } fields)
        {
            return;
        }

        var (soonest, longest) = (YearsBy(fast), YearsBy(slow));
        var carried = fields.Extractant == projection.Test.Extractant ? "" : $" Their tests were counted as {SoilTests.Words.Extractants.IdOf(fields.Extractant!.Value)}; the shares are carried over to yours.";
        Say($"Fields cropped without phosphorus fell by {PlainNumber.Of(slow)} to {PlainNumber.Of(fast)} % a year, the high ones slowest: by that it takes {PlainNumber.Range(Math.Round(soonest), Math.Round(longest))} years to {Level(level)}.{carried}", fields.Source);

        double YearsBy(decimal share) => YearsAheadFormulas.YearsToFall.Of(
            (projection.Start, level, new Coefficient((double)share)), working, Origin.Given(projection.Test.Where), Origin.Given("the guide's limit"), Origin.From(fields.Source)).Value;
    }

    private void BelowTheTarget()
    {
        if (nutrient == PlantNutrient.P2O5
            && projection.Pace.Likely.Value < 0
            && limits.TargetFrom is { } from
            && projection.Years[^1].Likely.MilligramsPerKilogram < from.MilligramsPerKilogram
            && question.Movements.ById(TurningPoint) is { Text: { } text } row)
        {
            Say(text, row.Source);
        }
    }

    private void Say(string sentence, Citation source) => words.Add(new Cited<string>(sentence, source));

    private static string Level(SoilConcentration level) => $"{PlainNumber.Of(level.MilligramsPerKilogram)} mg/kg";

    private string When(double years) => years switch
    {
        0 => "now",
        < 1 => "within a year",
        _ when years > question.Years => $"in about {PlainNumber.Of(Math.Round(years))} years, after the years shown",
        _ => $"in about {PlainNumber.Of(Math.Round(years))} {(Math.Round(years) == 1 ? "year" : "years")}",
    };

    private static string Range(YearsToLevel by) => (by.Earliest, by.Latest) switch
    {
        ({ } earliest, { } latest) => $"at the ends of both errors {PlainNumber.Range(Math.Round(earliest), Math.Round(latest))} years",
        ({ } earliest, null) => $"at the earliest {PlainNumber.Of(Math.Round(earliest))} years, perhaps never",
        _ => "perhaps never",
    };
}
