using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>
/// Two tests of one block are one better test only where they measured the same thing in the same way: one laboratory, one method, one season,
/// one depth. Anything else would average two different questions.
/// </summary>
public static class Pooling
{
    /// <summary>Pools the results of one analyte.</summary>
    /// <param name="first">One test of the block.</param>
    /// <param name="second">Another test of the same block.</param>
    /// <param name="analyte">Which analyte.</param>
    /// <param name="variability">The published spreads.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The pooled reading, or a refusal naming everything that differs.</returns>
    public static Answer<PooledReading> Of(SoilTest first, SoilTest second, Analyte analyte, Variability variability, WorkingSheet? working = null)
    {
        var name = Words.Analytes.IdOf(analyte);
        if (first.Of(analyte) is not { Amount.Kind: AmountKind.Measured } one || second.Of(analyte) is not { Amount.Kind: AmountKind.Measured } two)
        {
            return Answer<PooledReading>.Refused("two-numbers-needed", $"{name} is not a plain number in both tests.", "Two results pool only where both are numbers, not \"less than\" or \"more than\".");
        }

        if (!ResultSpreads.IsPh(analyte) && (one.Amount.Number <= 0 || two.Amount.Number <= 0))
        {
            return Answer<PooledReading>.Refused("two-numbers-needed", $"{name} is 0 in one of the tests: less than the laboratory can print.", "Use the other test alone.");
        }

        if (Differences(first, second, one, two) is { Count: > 0 } differences)
        {
            return Answer<PooledReading>.Refused(
                "tests-not-alike",
                $"The two {name} results cannot be pooled: {string.Join("; ", differences)}.",
                "Pool only tests of one block by one laboratory, one method, in one season, from one depth. State what is missing, or use the later test alone.");
        }

        return ReadingConversion.To(two, one.Unit, second.PoundsPerAcreFactor ?? first.PoundsPerAcreFactor)
            .Then(converted => ReadingConversion.To(one, one.Unit, first.PoundsPerAcreFactor).Then(own => ResultSpreads.Of(variability, one, own.Amount, first.Cores, working)
                .Then(a => ResultSpreads.Of(variability, two, converted.Amount, second.Cores, working)
                    .Select(b => Pooled(one, own.Amount, converted, a, b, DepthAssumed(first, second), working)))));
    }

    private static PooledReading Pooled(Reading reading, Amount one, ConvertedReading two, ResultSpread a, ResultSpread b, IEnumerable<Assumption> assumed, WorkingSheet? working)
    {
        var (x1, x2) = (new Coefficient((double)one.Number), new Coefficient((double)two.Amount.Number));
        Origin[] origins = [Origin.Given("first test"), Origin.Given("second test"), Origin.Given("its spread"), Origin.Given("its spread")];
        var (value, spread) = a.OnLogScale
            ? (CertaintyFormulas.PooledValue.Of((x1, x2, a.Relative, b.Relative), working, origins), a with { Relative = CertaintyFormulas.PooledSpread.Of((a.Relative, b.Relative), working) })
            : (CertaintyFormulas.PooledPh.Of((x1, x2, a.PhUnits, b.PhUnits), working, origins), a with { PhUnits = CertaintyFormulas.PooledPhSpread.Of((a.PhUnits, b.PhUnits), working) });
        // One digit more than the laboratory printed: a mean is finer than either.
        var decimals = Math.Min(Math.Max(one.Decimals, two.Amount.Decimals) + 1, 6);
        List<Assumption> assumptions = [.. a.Assumptions, .. b.Assumptions.Except(a.Assumptions), .. two.Assumptions, .. assumed];
        return new PooledReading(
            reading with { Amount = Amount.Measured(Math.Round((decimal)value.Value, decimals)), Method = reading.Method with { Basis = Basis.Element }, Where = "two tests pooled" },
            spread with { Cores = null, Assumptions = assumptions },
            assumptions);
    }

    private static List<string> Differences(SoilTest first, SoilTest second, Reading one, Reading two)
    {
        var found = new List<string>();
        if (TwoTests.SameLab(first, second) is not true)
        {
            found.Add($"the laboratory ({first.Lab ?? "not stated"}; {second.Lab ?? "not stated"})");
        }

        if (!TwoTests.SameMethod(one, two))
        {
            found.Add($"the method ({TwoTests.Method(one)}; {TwoTests.Method(two)})");
        }

        if (TwoTests.SameTime(first, second) is not true)
        {
            found.Add($"the season ({TwoTests.Day(first)}; {TwoTests.Day(second)})");
        }

        if (TwoTests.SameDepth(first, second) is false || first.Depth is null != second.Depth is null)
        {
            found.Add($"the depth ({TwoTests.Depth(first)}; {TwoTests.Depth(second)})");
        }

        return found;
    }

    private static IEnumerable<Assumption> DepthAssumed(SoilTest first, SoilTest second) => first.Depth is null && second.Depth is null
        ? [new Assumption("same-depth-taken", "Neither test states its depth: both are taken to be of the same layer.", Citation.OurJudgement)]
        : [];
}
