using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>What to do where the soil is less acid than wanted.</summary>
public static class SulfurChoice
{
    // Ours: less than this lies within what tests and seasons vary.
    private const decimal WorthSulfur = 0.5m;
    private const double SliceOfSoil = 2_000_000;

    /// <summary>Advice where the pH is above the target; null at or below it, and where the pH is not a measured pH in water.</summary>
    /// <param name="requirement">The lime requirement, which is zero there: it holds the pH in water and the target.</param>
    /// <param name="test">The soil test.</param>
    /// <param name="asked">True when the request names the target pH itself.</param>
    /// <param name="tables">Published rules.</param>
    /// <param name="start">Day of the first dose; null when not known.</param>
    /// <param name="area">Ground that is spread; null without a bed.</param>
    /// <param name="working">Receives the lines; null for none.</param>
    public static SulfurAdvice? For(LimeRequirement requirement, SoilTest test, bool asked, LimingTables tables, DateOnly? start, Area? area, WorkingSheet? working)
    {
        var (ph, goal) = (requirement.SoilPh, requirement.Target.Value);
        if (!requirement.Lime.IsZero || ph <= goal)
        {
            return null;
        }

        working?.Section("Lowering pH");
        var rules = new SulfurRules(tables, test, ph, goal, Origin.Given("soil pH of the test"), working);
        var all = rules.All();
        var futile = FutileBefore(tables, working);
        var months = Figure(tables, "months-ahead") is { } ahead ? (int)ahead.Value : 3;
        var free = test.FreeLime == true;
        var wanted = goal < TargetPhChoice.AcidLovingBelow || (asked && ph - goal >= WorthSulfur);
        var used = free || !wanted ? null : all.FirstOrDefault(r => r.Low is { } low && low > default(Rate<ElementalSulfur>) && r.ToPh >= goal);
        return new SulfurAdvice(
            used is not null,
            wanted,
            Say(ph, goal, free, wanted, used, futile),
            ph,
            goal,
            used,
            all,
            used is null ? [] : Doses(used.Low!.Value, tables, months, start, area),
            futile,
            used is null ? null : start?.AddMonths(months),
            months,
            [.. Cautions(test, ph, free, used, tables)],
            rules.Assumptions,
            used?.Source ?? Citation.OurJudgement);
    }

    private static Rate<ElementalSulfur>? FutileBefore(LimingTables tables, WorkingSheet? working) =>
        tables.FigureOf("sulfur", "calcium-carbonate-dissolved") is { Value: { } dissolved } figure
            ? SulfurFormulas.ForFreeLime.Of(
                (MassShare.FromPercent(1), MassPerArea.FromPoundsPerAcre(SliceOfSoil), new Coefficient((double)dissolved)),
                working,
                Origin.Given("for each 1 %"),
                Origin.From(Citation.CommonPractice),
                Origin.From(figure.Source))
            : null;

    private static SulfurDose[] Doses(Rate<ElementalSulfur> rate, LimingTables tables, int months, DateOnly? start, Area? area)
    {
        SulfurDose Dose(double part, int after) => new(rate * part, area is { } ground ? (rate * part).Amount.On(ground) : null, after, start?.AddMonths(after));
        return Figure(tables, "split-above") is { } most && Figure(tables, "first-dose-thirds") is { } thirds && rate.Amount.PoundsPer1000SquareFeet > (double)most.Value
            ? [Dose((double)thirds.Value / 3, 0), Dose(1 - ((double)thirds.Value / 3), months)]
            : [Dose(1, 0)];
    }

    private static string Say(decimal ph, decimal goal, bool free, bool wanted, SulfurRule? used, Rate<ElementalSulfur>? futile)
    {
        var start = Invariant($"The soil stands at pH {ph}, above {goal}: no lime.");
        var amount = futile is { } each ? Invariant($" Each 1 % of free lime in the top 2,000,000 lb of an acre is 20,000 lb of limestone and takes about {Math.Round(each.PoundsPerAcre / 100) * 100:#,0} lb/acre ({Math.Round(each.Amount.PoundsPer1000SquareFeet):0} lb per 1000 sq ft) of sulfur before the pH moves at all.") : "";
        if (free)
        {
            return $"{start} The soil holds free lime, so sulfur is futile.{amount} Grow crops that stand this pH, or acid-loving ones in a raised bed or pots of another soil.";
        }

        if (!wanted)
        {
            return $"{start} No sulfur is advised: only a crop that needs acid soil, or a target at least half a unit lower, calls for it.";
        }

        return used is null
            ? $"{start} No published sulfur rule reaches from there to {goal.ToString(System.Globalization.CultureInfo.InvariantCulture)}."
            : $"{start} Elemental sulfur, {PlainNumber.Of(used.Low!.Value.PoundsPerAcre)} lb/acre ({PlainNumber.Of(used.Low.Value.Amount.PoundsPer1000SquareFeet)} lb per 1000 sq ft) by the {used.Title}, takes it {Invariant($"from pH {used.FromPh} to {used.ToPh}")}. Published rules differ: compare them.";
    }

    private static IEnumerable<string> Cautions(SoilTest test, decimal ph, bool free, SulfurRule? used, LimingTables tables)
    {
        if (!free && test.FreeLime is null && ph >= 7)
        {
            yield return "Drop vinegar on a dry crumb first: where it fizzes there is free lime, and sulfur is futile.";
        }

        if (used is not null)
        {
            yield return Figure(tables, "split-above") is { } most
                ? Invariant($"Largest dose: {most.Value} lb per 1000 sq ft; above it two thirds first and the rest only after a new test (Tennessee). Where the test then shows the target, stop.")
                : "Test again before any further dose.";
            yield return "Sulfur needs warm, moist soil and months to act. Spread it before planting and work it in.";
        }

        yield return "Gypsum moves the pH neither way: it is no substitute for sulfur, nor for lime.";
        if (tables.SulfurFigures.FirstOrDefault(f => f.Symbol == "ferrous-sulfate-times") is { } times)
        {
            yield return Invariant($"Ferrous sulfate would need {times.Value} times as much.");
        }
    }

    private static SulfurFigure? Figure(LimingTables tables, string symbol) => tables.SulfurFigures.FirstOrDefault(f => f.Rule == "tennessee" && f.Symbol == symbol);
}
