using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// What earlier lime takes off a requirement. Lime spread after the sample is taken off whole, for the test cannot show it. Lime of the year
/// before is taken off by the rule of the method that prints one (North Carolina); where the method prints none, that is said.
/// </summary>
public static class RecentLimeCredit
{
    private const int MonthsThatCount = 12;

    /// <summary>What is left of lime some months after spreading: RC = applied × max(0, 1 − r × months).</summary>
    public static Formula<(Rate<CalciumCarbonate> Applied, Coefficient LossPerMonth, Coefficient Months), Rate<CalciumCarbonate>> Residual { get; } = new(
        "earlier-lime-left",
        "What is left of earlier lime, North Carolina",
        "RC = A × max(0, 1 − r / 100 × m)",
        new Citation("ncda-bufftab", "residual credit", Evidence.Seen),
        [
            new(new Symbol("A", "lime spread, as calcium carbonate equivalent", "lb/acre", 0), x => x.Applied.PoundsPerAcre),
            new(new Symbol("r", "part lost in a month", "% per month", 0, 100), x => x.LossPerMonth.Value),
            new(new Symbol("m", "months from spreading to sampling", "months", 0), x => x.Months.Value),
        ],
        new(new Symbol("RC", "residual credit", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<CalciumCarbonate>.FromPoundsPerAcre(v[0]), new Coefficient(v[1]), new Coefficient(v[2])),
        x => x.Applied * Math.Max(0, 1 - (x.LossPerMonth.Value / 100 * x.Months.Value)),
        "The page prints the monthly losses without a worked example; that they run in a straight line is our reading.");

    /// <summary>A requirement less what earlier lime still brings: L = max(LR − RC, 0).</summary>
    public static Formula<(Rate<CalciumCarbonate> Requirement, Rate<CalciumCarbonate> Earlier), Rate<CalciumCarbonate>> LessEarlier { get; } = new(
        "lime-less-earlier",
        "Lime requirement less earlier lime",
        "L = max(LR − RC, 0)",
        Citation.OurArithmetic,
        [
            new(new Symbol("LR", "lime requirement", "lb/acre", 0), x => x.Requirement.PoundsPerAcre),
            new(new Symbol("RC", "what earlier lime still brings, as calcium carbonate equivalent", "lb/acre", 0), x => x.Earlier.PoundsPerAcre),
        ],
        new(new Symbol("L", "lime still needed", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<CalciumCarbonate>.FromPoundsPerAcre(v[0]), Rate<CalciumCarbonate>.FromPoundsPerAcre(v[1])),
        x => x.Requirement > x.Earlier ? x.Requirement - x.Earlier : default,
        "A difference; no publication that was read works it as an example.");

    /// <summary>The requirement less earlier lime.</summary>
    /// <param name="requirement">The requirement, for the depth that is worked.</param>
    /// <param name="earlier">Lime spread lately.</param>
    /// <param name="test">The soil test, for its day of sampling and its soil.</param>
    /// <param name="method">The method of the requirement; null for the laboratory's own rate.</param>
    /// <param name="working">Receives the lines; null for none.</param>
    public static LimeRequirement Less(LimeRequirement requirement, IReadOnlyList<EarlierLime> earlier, SoilTest test, LimeMethod? method, WorkingSheet? working) =>
        requirement.Lime.IsZero ? requirement : earlier.Aggregate(requirement, (left, lime) => Less(left, lime, test, method, working));

    private static LimeRequirement Less(LimeRequirement requirement, EarlierLime lime, SoilTest test, LimeMethod? method, WorkingSheet? working)
    {
        var when = Invariant($"{lime.What}, spread on {lime.Date:yyyy-MM-dd},");
        var months = test.Sampled is { } day && lime.Date < day ? Months(lime.Date, day) : 0;
        if (months >= MonthsThatCount)
        {
            return Say(requirement, "recent-lime-in-test", Invariant($"{when} acted for {months} months before the sample: the test shows it, and nothing is taken off."), method?.Source ?? Citation.CommonPractice);
        }

        if (lime.Spread is not { } spread)
        {
            return Say(requirement, "recent-lime-amount-unknown", $"{when} is not taken off, because its amount was not given. Test again before liming, or give the amount.", Citation.OurJudgement);
        }

        if (test.Sampled is not { } sampled || lime.Date >= sampled)
        {
            var why = test.Sampled is null ? "the day of sampling is not known, so it counts as spread after the sample" : "it was spread after the sample";
            return Take(requirement, spread, Origin.Given("lime spread lately"), working, Invariant($"{when} is taken off whole ({spread.PoundsPerAcre:0} lb/acre CaCO3): {why}."), Citation.OurArithmetic);
        }

        var organic = test.SoilGroup == SoilGroup.Organic;
        if (method?.Parameters.FirstOrDefault(p => p.Symbol == (organic ? "residual-loss-organic" : "residual-loss-mineral")) is not { } loss)
        {
            return Say(
                requirement,
                "recent-lime-not-credited",
                Invariant($"{when} had {months} months before the sample, and part of it has still to act. {(method is null ? "The laboratory's rate" : method.Title)} prints no rule for that, so nothing is taken off. Test again 12 months after that spreading before you lime again."),
                method?.Source ?? Citation.OurJudgement);
        }

        var credit = Residual.Of((spread, new Coefficient((double)loss.Value), new Coefficient(months)), working, Origin.Given("lime spread lately"), Origin.From(loss.Source), Origin.Given("days of spreading and sampling"));
        return Take(
            requirement,
            credit,
            Origin.Line(working?.LastLine ?? 0),
            working,
            Invariant($"{when} is taken off by the rule of {method.Title}: {loss.Value} % a month on {(organic ? "an organic" : "a mineral")} soil, {months} months, so {credit.PoundsPerAcre:0} of {spread.PoundsPerAcre:0} lb/acre CaCO3 are left.{(organic || test.SoilGroup is not null ? "" : " The soil is taken as mineral.")}"),
            loss.Source);
    }

    private static int Months(DateOnly from, DateOnly to) => ((to.Year - from.Year) * 12) + to.Month - from.Month - (to.Day < from.Day ? 1 : 0);

    private static LimeRequirement Take(LimeRequirement requirement, Rate<CalciumCarbonate> credit, Origin from, WorkingSheet? working, string text, Citation source)
    {
        LessEarlier.Of((requirement.Rate, credit), working, Origin.From(requirement.Source), from);
        return Say(requirement with { Lime = requirement.Lime.Less(credit.Amount) }, "recent-lime-taken-off", text, source);
    }

    // Where lime was named, the method's own sentence that none was taken off would be false.
    private static LimeRequirement Say(LimeRequirement requirement, string code, string text, Citation source) =>
        requirement with { Assumptions = [.. requirement.Assumptions.Where(a => a.Code != "recent-lime"), new Assumption(code, text, source)] };
}
