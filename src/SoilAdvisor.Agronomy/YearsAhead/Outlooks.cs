using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>From a rated soil test, a plan and its harvests to where the nutrient is heading.</summary>
public static class Outlooks
{
    /// <summary>Phosphorus over the years.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="supply">What the bed gets.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>
    /// The outlook, or a refusal that says what is missing: yield-needed, removal-not-held, movement-not-held, unit-not-convertible,
    /// extractant-missing.
    /// </returns>
    public static Answer<NutrientOutlook> OfPhosphorus(OutlookQuestion question, Supply<TotalP2O5> supply, WorkingSheet? working = null) =>
        Start(question, working).Then(start => question.Movements.OfPhosphorus(start.Test.Extractant, question.Region)
            .Then(movement => SeasonRemovals.OfPhosphate(question.Plantings, working)
                .Then(removal =>
                {
                    var balance = new YearlyBalance<TotalP2O5>(supply.Yearly, supply.YearlyHigh, supply.Once, supply.OnceHigh, removal.Removed);
                    return Projections.OfPhosphorus(start.Test, movement, balance, question.Years, working).Select(projection =>
                        new OutlookWords(question, start.Limits, projection, PlantNutrient.P2O5, Middle(supply.Yearly, supply.YearlyHigh), Middle(supply.Once, supply.OnceHigh), removal.Removed.Amount, movement.Source)
                            .Outlook([.. start.Assumptions, .. movement.Assumptions, .. removal.Assumptions], ToRaise(start, movement, working), working));
                })));

    /// <summary>Potassium over the years.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="supply">What the bed gets.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The outlook, or a refusal that says what is missing: as <see cref="OfPhosphorus"/>, and cec-needed.</returns>
    public static Answer<NutrientOutlook> OfPotassium(OutlookQuestion question, Supply<K2O> supply, WorkingSheet? working = null) =>
        Start(question, working).Then(start => question.Movements.OfPotassium(start.Test.Extractant, question.Region, CecOf(question.Test), working)
            .Then(movement => SeasonRemovals.OfPotash(question.Plantings, working)
                .Then(removal =>
                {
                    var balance = new YearlyBalance<K2O>(supply.Yearly, supply.YearlyHigh, supply.Once, supply.OnceHigh, removal.Removed);
                    return Projections.OfPotassium(start.Test, movement, balance, question.Years, working).Select(projection =>
                        new OutlookWords(question, start.Limits, projection, PlantNutrient.K2O, Middle(supply.Yearly, supply.YearlyHigh), Middle(supply.Once, supply.OnceHigh), removal.Removed.Amount, movement.Source)
                            .Outlook([.. start.Assumptions, .. movement.Assumptions, .. removal.Assumptions], ToRaise(start, movement, working), working));
                })));

    private static Answer<Begun> Start(OutlookQuestion question, WorkingSheet? working)
    {
        var (reading, rating) = (question.Rating.Reading, question.Rating);
        if (reading.Method.Extractant is not { } extractant)
        {
            return Answer<Begun>.Refused("extractant-missing", $"{Words.Analytes.IdOf(reading.Analyte)} stands without its extractant.", "Name the extractant: a soil test moves by its own pounds.");
        }

        return ReadingConversion.To(reading, ReportingUnit.MilligramsPerKilogram, question.Test.PoundsPerAcreFactor).Select(read =>
        {
            var assumptions = new List<Assumption>(read.Assumptions);
            if (read.Amount.Kind != AmountKind.Measured)
            {
                assumptions.Add(new Assumption(
                    "open-result",
                    $"{Words.Analytes.IdOf(reading.Analyte)} was reported as {reading.Amount} {Words.Units.IdOf(reading.Unit)}; the years ahead are reckoned from that limit itself.",
                    Citation.OurJudgement));
            }

            var spread = default(CoefficientOfVariation);
            if (ResultSpreads.Of(question.Variability, reading, read.Amount, question.Test.Cores, working).TryGet(out var known, out _))
            {
                spread = known.Relative;
                assumptions.AddRange(known.Assumptions);
            }
            else
            {
                assumptions.Add(new Assumption("band-without-spread", $"How far a {Words.Analytes.IdOf(reading.Analyte)} result may lie from the truth is not held: the band holds only how differently soils answer.", Citation.OurJudgement));
            }

            var target = TargetRange.Of(rating);
            var limits = new OutlookLimits(LevelOf(question, target?.Lower), LevelOf(question, target?.Upper), LevelOf(question, StopOf(rating)));
            return new Begun(new TestedLevel(extractant, SoilConcentration.FromMilligramsPerKilogram((double)read.Amount.Number), spread, reading.Where), limits, assumptions);
        });
    }

    private static decimal? StopOf(Rating rating)
    {
        var stop = Enumerable.Range(0, rating.Scale.Classes.Count).FirstOrDefault(i => rating.Scale.Classes[i].Standing == Standing.Stop, -1);
        return stop < 0 ? null : rating.Scale.LowerOf(stop, rating.Cec);
    }

    // A limit in the scale's unit, counted in mg/kg as the reading was.
    private static SoilConcentration? LevelOf(OutlookQuestion question, decimal? limit)
    {
        var reading = question.Rating.Reading;
        return limit is { } printed && ReadingConversion.To(
                reading with { Amount = Amount.Measured(printed), Unit = question.Rating.Scale.Unit, Method = reading.Method with { Basis = Basis.Element } },
                ReportingUnit.MilligramsPerKilogram,
                question.Test.PoundsPerAcreFactor).TryGet(out var level, out _)
            ? SoilConcentration.FromMilligramsPerKilogram((double)level.Amount.Number)
            : null;
    }

    private static ExchangeCapacity? CecOf(SoilTest test) => RatingScale.CecOf(test) is { } cec ? ExchangeCapacity.FromMilliequivalentsPer100Grams((double)cec) : null;

    private static MassPerArea Middle<TForm>(Rate<TForm> low, Rate<TForm> high)
        where TForm : IBalancedForm => (low.Amount + high.Amount) * 0.5;

    private static MassPerArea? ToRaise(Begun start, TestMovement<TotalP2O5> movement, WorkingSheet? working) => start.Limits.TargetFrom is { } level && level.MilligramsPerKilogram > start.Test.Level.MilligramsPerKilogram
        ? YearsAheadFormulas.PhosphateToRaise.Of((level, start.Test.Level, movement.PoundsPerUnit), working, Origin.Given("the guide's target"), Origin.Given(start.Test.Where), Origin.From(movement.Source)).Amount
        : null;

    private static MassPerArea? ToRaise(Begun start, TestMovement<K2O> movement, WorkingSheet? working) => start.Limits.TargetFrom is { } level && level.MilligramsPerKilogram > start.Test.Level.MilligramsPerKilogram
        ? YearsAheadFormulas.PotashToRaise.Of((level, start.Test.Level, movement.PoundsPerUnit), working, Origin.Given("the guide's target"), Origin.Given(start.Test.Where), Origin.From(movement.Source)).Amount
        : null;

    private sealed record Begun(TestedLevel Test, OutlookLimits Limits, IReadOnlyList<Assumption> Assumptions);
}
