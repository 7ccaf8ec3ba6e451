using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>A soil test carried forward in a straight line.</summary>
/// <param name="Test">Where it starts.</param>
/// <param name="LikelyFactor">The result divided and multiplied by this is where its true value lies four times in five.</param>
/// <param name="Pace">Change in a year.</param>
/// <param name="Once">Change by what is spread once only.</param>
/// <param name="Years">Year by year, from 0.</param>
public sealed record Projection(TestedLevel Test, Coefficient LikelyFactor, ChangeOfTest Pace, ChangeOfTest Once, IReadOnlyList<ProjectedYear> Years)
{
    // A change below this in a year is rounding, mg/kg.
    private const double Still = 1e-6;

    /// <summary>True when the test neither climbs nor falls.</summary>
    public bool IsFlat => Math.Abs(Pace.Likely.Value) < Still;

    /// <summary>Level that it starts from, mg/kg: the test, with what was spread once.</summary>
    public SoilConcentration Start => Years[0].Likely;

    /// <summary>When it reaches a level. The ends take the test and the pace at their ends together, so they are wider than the band.</summary>
    /// <param name="level">The level.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    public YearsToLevel YearsTo(SoilConcentration level, WorkingSheet? working = null)
    {
        var (now, factor) = (Test.Level.MilligramsPerKilogram, LikelyFactor.Value);
        var rises = level.MilligramsPerKilogram > Start.MilligramsPerKilogram;
        var likely = After(level, rises, now + Once.Likely.Value, Pace.Likely, working);
        var low = After(level, rises, (now / factor) + Once.Low.Value, Pace.Low, null);
        var high = After(level, rises, (now * factor) + Once.High.Value, Pace.High, null);
        return rises ? new YearsToLevel(likely, high, low) : new YearsToLevel(likely, low, high);
    }

    private double? After(SoilConcentration level, bool rises, double start, Coefficient pace, WorkingSheet? working)
    {
        if (rises ? start >= level.MilligramsPerKilogram : start <= level.MilligramsPerKilogram)
        {
            return 0;
        }

        return (rises ? pace.Value : -pace.Value) < Still
            ? null
            : YearsAheadFormulas.YearsToLevel.Of((level, SoilConcentration.FromMilligramsPerKilogram(start), pace), working, Origin.Given("the guide's limit"), Origin.Given(Test.Where), Origin.Given("the change in a year above")).Value;
    }
}
