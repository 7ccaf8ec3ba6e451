using System.Globalization;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>
/// Whether two results of one block differ by more than chance. Other methods and depths are other questions and are refused; another
/// laboratory widens the answer by what laboratories differ by; another season is said.
/// </summary>
public static class TestChanges
{
    /// <summary>Compares the results of one analyte.</summary>
    /// <param name="before">First test of the block.</param>
    /// <param name="after">Second test of the same block.</param>
    /// <param name="analyte">Which analyte.</param>
    /// <param name="variability">The published spreads.</param>
    /// <param name="confidence">Confidence wanted.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The change, or a refusal.</returns>
    public static Answer<TestChange> Of(SoilTest before, SoilTest after, Analyte analyte, Variability variability, Confidence confidence, WorkingSheet? working = null)
    {
        var name = Words.Analytes.IdOf(analyte);
        if (before.Of(analyte) is not { Amount.Kind: AmountKind.Measured } one || after.Of(analyte) is not { Amount.Kind: AmountKind.Measured } two)
        {
            return Answer<TestChange>.Refused("two-numbers-needed", $"{name} is not a plain number in both tests.", "A change can only be judged between two numbers, not \"less than\" or \"more than\".");
        }

        if (!TwoTests.SameMethod(one, two))
        {
            return Answer<TestChange>.Refused(
                "methods-differ",
                $"{name} was measured by {TwoTests.Method(one)} and then by {TwoTests.Method(two)}: two different tests, whose numbers say nothing about a change.",
                "Start a new series with the new method, or ask the laboratory for the old one once more.");
        }

        if (TwoTests.SameDepth(before, after) is false)
        {
            return Answer<TestChange>.Refused(
                "depths-differ",
                $"{name} was sampled from {TwoTests.Depth(before)} and then from {TwoTests.Depth(after)}: two layers, not a change.",
                "Sample the same depth every time.");
        }

        return ReadingConversion.To(one, one.Unit, before.PoundsPerAcreFactor)
            .Then(own => ReadingConversion.To(two, one.Unit, after.PoundsPerAcreFactor ?? before.PoundsPerAcreFactor)
                .Then(converted => Spreads(before, after, one, own.Amount, two, converted.Amount, variability, working)
                    .Select(spreads => Change(before, after, one, own.Amount, converted, spreads, variability, confidence, working))));
    }

    private static Answer<(ResultSpread First, ResultSpread Second)> Spreads(
        SoilTest before, SoilTest after, Reading one, Amount first, Reading two, Amount second, Variability variability, WorkingSheet? working)
    {
        var pair = ResultSpreads.Of(variability, one, first, before.Cores, working)
            .Then(a => ResultSpreads.Of(variability, two, second, after.Cores, working).Select(b => (First: a, Second: b)));
        if (TwoTests.SameLab(before, after) is not false)
        {
            return pair;
        }

        if (variability.For(one.Analyte, one.Method.Extractant, SpreadUse.TwoLaboratories) is not { Measure: SpreadMeasure.CoefficientOfVariation, Value: { } percent } between)
        {
            return Answer<(ResultSpread, ResultSpread)>.Refused(
                "laboratories-differ",
                $"The two {Words.Analytes.IdOf(one.Analyte)} results come from two laboratories ({before.Lab}; {after.Lab}), and no figure says how far laboratories differ in it.",
                "Send the next sample to the laboratory of the first.");
        }

        var why = ResultSpreads.Said(between, "laboratories-differ-spread");
        var more = CoefficientOfVariation.FromPercent((double)percent);
        return pair.Select(p => (p.First.WidenedBy(more, why), p.Second.WidenedBy(more, why)));
    }

    private static TestChange Change(
        SoilTest before, SoilTest after, Reading reading, Amount first, ConvertedReading second, (ResultSpread First, ResultSpread Second) spreads, Variability variability, Confidence confidence, WorkingSheet? working)
    {
        var score = Cores.Score(confidence, working);
        var scoreLine = Origin.Line(working?.LastLine ?? 0);
        var s1 = Deviation(spreads.First, first, working);
        var firstLine = Origin.Line(working?.LastLine ?? 0);
        var s2 = Deviation(spreads.Second, second.Amount, working);
        var deviation = SamplingFormulas.DeviationOfDifference.Of((s1, s2), working, firstLine, Origin.Line(working?.LastLine ?? 0));
        var smallest = SamplingFormulas.SmallestProvableChange.Of((score, deviation), working, scoreLine, Origin.Line(working?.LastLine ?? 0));
        var difference = second.Amount.Number - first.Number;
        var isProved = (double)Math.Abs(difference) >= smallest.Value;
        return new TestChange(
            reading.Analyte, first, second.Amount, reading.Unit, difference, deviation.Value, smallest.Value, isProved, confidence,
            Sentence(reading, first, second.Amount, difference, smallest.Value, isProved, confidence),
            [.. spreads.First.Assumptions, .. spreads.Second.Assumptions.Except(spreads.First.Assumptions), .. second.Assumptions, .. Said(before, after, reading, variability)]);
    }

    private static Coefficient Deviation(ResultSpread spread, Amount amount, WorkingSheet? working) => spread.OnLogScale
        ? SamplingFormulas.DeviationOfResult.Of((spread.Relative, new Coefficient((double)amount.Number)), working, Origin.Given("the spread above"), Origin.Given("the result"))
        : new Coefficient(spread.PhUnits.PhUnits);

    private static string Sentence(Reading reading, Amount first, Amount second, decimal difference, double smallest, bool isProved, Confidence confidence)
    {
        var unit = reading.Unit == ReportingUnit.PhUnits ? "" : " " + Words.Units.IdOf(reading.Unit);
        var name = Words.Analytes.IdOf(reading.Analyte);
        var course = $"{name} went from {PlainNumber.Of(first.Number)} to {PlainNumber.Of(second.Number)}{unit}";
        return isProved
            ? $"{course}, a real {(difference > 0 ? "rise" : "fall")} at {confidence}: chance explains less than {PlainNumber.Of(smallest)}{unit}."
            : $"{course}, which chance alone can do: at {confidence} only a change of {PlainNumber.Of(smallest)}{unit} or more is real.";
    }

    private static IEnumerable<Assumption> Said(SoilTest before, SoilTest after, Reading reading, Variability variability)
    {
        if (TwoTests.SameLab(before, after) is null)
        {
            yield return new Assumption("same-laboratory-taken", "The laboratory is not stated in both tests: both are taken to be of the same one.", Citation.OurJudgement);
        }

        if (TwoTests.SameDepth(before, after) is null)
        {
            yield return new Assumption("same-depth-taken", "The depth is not stated in both tests: both are taken to be of the same layer.", Citation.OurJudgement);
        }

        switch (TwoTests.SameSeason(before, after))
        {
            case null:
                yield return new Assumption("same-season-taken", "The day of sampling is not stated in both tests: both are taken to be of the same time of year.", Citation.OurJudgement);
                break;
            case false:
                var swing = variability.For(reading.Analyte, reading.Method.Extractant, SpreadUse.TwoSeasons);
                yield return new Assumption(
                    "season-differs",
                    $"The samples were taken at different times of year ({TwoTests.Day(before)}; {TwoTests.Day(after)}). {(swing is null ? "How far the season moves it is not held." : Swing(swing))} No correction is accepted; sample at the same time of year.",
                    swing?.Source ?? Citation.OurJudgement);
                break;
            default:
                break;
        }
    }

    private static string Swing(Spread swing) => string.Create(
        CultureInfo.InvariantCulture,
        $"The season alone may move {Words.Analytes.IdOf(swing.Analyte!.Value)} by {swing.Low:0.###} to {swing.High:0.###} {(swing.Unit == ReportingUnit.PhUnits ? "pH units" : Words.Units.IdOf(swing.Unit!.Value))}.{(swing.Note is null ? "" : " " + swing.Note)}");
}
