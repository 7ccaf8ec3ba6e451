using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>
/// A soil test carried forward: what is spread less what is harvested, over the pounds that move the test by one unit. The band holds the
/// test's own spread, the ends of the analyses, and how differently soils answer; not the weather, and not a change of crops or of plan.
/// </summary>
public static class Projections
{
    /// <summary>Longest projection, years. Ours.</summary>
    public const int MostYears = 20;

    /// <summary>The phosphorus test of later years.</summary>
    /// <param name="test">Where it starts.</param>
    /// <param name="movement">Phosphate that moves it.</param>
    /// <param name="balance">What is spread and removed.</param>
    /// <param name="years">How many, 1 to <see cref="MostYears"/>.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The projection, or a refusal: movement-of-another-extractant, years-out-of-range.</returns>
    public static Answer<Projection> OfPhosphorus(TestedLevel test, TestMovement<TotalP2O5> movement, YearlyBalance<TotalP2O5> balance, int years, WorkingSheet? working = null) =>
        Of(test, movement, balance, years, YearsAheadFormulas.PhosphateBalance, YearsAheadFormulas.ChangeOfPhosphorusTest, working);

    /// <summary>The potassium test of later years.</summary>
    /// <param name="test">Where it starts.</param>
    /// <param name="movement">Potash that moves it.</param>
    /// <param name="balance">What is spread and removed.</param>
    /// <param name="years">How many, 1 to <see cref="MostYears"/>.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The projection, or a refusal: movement-of-another-extractant, years-out-of-range.</returns>
    public static Answer<Projection> OfPotassium(TestedLevel test, TestMovement<K2O> movement, YearlyBalance<K2O> balance, int years, WorkingSheet? working = null) =>
        Of(test, movement, balance, years, YearsAheadFormulas.PotashBalance, YearsAheadFormulas.ChangeOfPotassiumTest, working);

    private static Answer<Projection> Of<TForm>(
        TestedLevel test,
        TestMovement<TForm> movement,
        YearlyBalance<TForm> balance,
        int years,
        Formula<(Rate<TForm> Applied, Rate<TForm> Removed), Rate<TForm>> left,
        Formula<(Rate<TForm> Balance, Coefficient PoundsPerUnit), Coefficient> change,
        WorkingSheet? working)
        where TForm : IBalancedForm
    {
        if (test.Extractant != movement.Extractant)
        {
            return Answer<Projection>.Refused(
                "movement-of-another-extractant",
                $"The soil was tested by {Words.Extractants.IdOf(test.Extractant)}, and the pounds for one unit belong to {Words.Extractants.IdOf(movement.Extractant)}: two different tests.",
                "Use a figure that belongs to the extractant of your test.");
        }

        if (years is < 1 or > MostYears)
        {
            return Answer<Projection>.Refused("years-out-of-range", $"{years} years cannot be projected.", $"Ask for 1 to {MostYears} years.");
        }

        var factor = YearsAheadFormulas.LikelyFactor.Of((LikelyRange.StandardScore, test.Spread), working, Origin.From(Citation.OurJudgement), Origin.Given("the spread above"));
        var pace = Changed(left, change, movement, (balance.Applied, balance.AppliedHigh), balance.Removed, working);
        var once = balance.OnceHigh.Amount.IsZero ? default : Changed(left, change, movement, (balance.Once, balance.OnceHigh), default, working);
        return Answer<Projection>.Given(new Projection(test, factor, pace, once, [.. Enumerable.Range(0, years + 1).Select(year => After(test, factor, pace, once, year, year == 0 ? null : working))]));
    }

    private static ChangeOfTest Changed<TForm>(
        Formula<(Rate<TForm> Applied, Rate<TForm> Removed), Rate<TForm>> left,
        Formula<(Rate<TForm> Balance, Coefficient PoundsPerUnit), Coefficient> change,
        TestMovement<TForm> movement,
        (Rate<TForm> Low, Rate<TForm> High) applied,
        Rate<TForm> removed,
        WorkingSheet? working)
        where TForm : IBalancedForm
    {
        var middle = (applied.Low + applied.High) * 0.5;
        return new ChangeOfTest(End(applied.Low, low: true), Line(middle, movement.PoundsPerUnit), End(applied.High, low: false));

        Coefficient Line(Rate<TForm> spread, Coefficient pounds)
        {
            var balance = left.Of((spread, removed), working, Origin.Given("the plan"), Origin.Given("the harvests above"));
            return change.Of((balance, pounds), working, Origin.Line(working?.LastLine ?? 0), Origin.From(movement.Source));
        }

        // A soil that answers strongly moves further in whichever direction the balance points.
        Coefficient End(Rate<TForm> spread, bool low)
        {
            var strong = spread > removed != low;
            return Line(spread, new Coefficient(strong ? movement.PoundsPerUnit.Value / movement.BandFactor.Value : movement.PoundsPerUnit.Value * movement.BandFactor.Value));
        }
    }

    private static ProjectedYear After(TestedLevel test, Coefficient factor, ChangeOfTest pace, ChangeOfTest once, int year, WorkingSheet? working)
    {
        var (given, computed) = (Origin.Given(test.Where), Origin.Given("the changes above"));
        var likely = YearsAheadFormulas.ProjectedTest.Of((test.Level, once.Likely, new Coefficient(year), pace.Likely), working, given, computed, Origin.Given("the year"), computed);
        var projected = Origin.Line(working?.LastLine ?? 0);
        var change = Until(once.Likely, pace.Likely, year);
        return new ProjectedYear(
            year,
            YearsAheadFormulas.LowEnd.Of((likely, test.Level, factor, change, Until(once.Low, pace.Low, year)), working, projected, given, computed, computed, computed),
            likely,
            YearsAheadFormulas.HighEnd.Of((likely, test.Level, factor, change, Until(once.High, pace.High, year)), working, projected, given, computed, computed, computed));
    }

    private static Coefficient Until(Coefficient once, Coefficient pace, int year) => new(once.Value + (year * pace.Value));
}
