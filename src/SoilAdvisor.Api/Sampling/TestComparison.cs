using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Sampling;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Sampling;

/// <summary>Two soil tests of one block, analyte by analyte.</summary>
internal static class TestComparison
{
    private const string Pointer = "/tests";

    public static (IReadOnlyList<TestChangeAnswer>? Changes, IReadOnlyList<PooledAnswer>? Pooled) Of(
        SamplingRequest request, Analyte? only, Confidence confidence, WorkingSheet? sheet, Calculation calculation)
    {
        var faults = calculation.Faults;
        if (request.Tests is not [{ } one, { } two]
            || SoilTestReader.Read(one, PointerPath.Down(Pointer, 0), faults) is not { } before
            || SoilTestReader.Read(two, PointerPath.Down(Pointer, 1), faults) is not { } after)
        {
            return default;
        }

        var shared = before.Readings.Select(r => r.Analyte).Where(a => after.Of(a) is not null && (only is null || a == only)).ToList();
        if (shared.Count == 0)
        {
            faults.Add(Pointer, "no-shared-analyte", "The two tests share no analyte that could be read.", "Give the same analytes in both, with unit and method.");
            return default;
        }

        var (changes, pooled) = (new List<TestChangeAnswer>(), new List<PooledAnswer>());
        foreach (var analyte in shared)
        {
            var where = before.Of(analyte)!.Where;
            sheet?.Section($"{Words.Analytes.IdOf(analyte)}: a real change?");
            if (TestChanges.Of(before, after, analyte, calculation.Tables.Variability, confidence, sheet).TryGet(out var change, out var reason))
            {
                changes.Add(Write(change, calculation));
            }
            else
            {
                faults.Add(where, reason);
            }

            sheet?.Section($"{Words.Analytes.IdOf(analyte)}: pooled");
            pooled.Add(Write(analyte, where, Pooling.Of(before, after, analyte, calculation.Tables.Variability, sheet), calculation));
        }

        return (changes, pooled);
    }

    private static TestChangeAnswer Write(TestChange change, Calculation calculation)
    {
        var unit = Words.Units.IdOf(change.Unit);
        return new TestChangeAnswer(
            Words.Analytes.IdOf(change.Analyte),
            new Quantity(change.Before.Number, unit),
            new Quantity(change.After.Number, unit),
            new Quantity(change.Difference, unit),
            new Quantity(Units.Rounded(change.Deviation), unit),
            new Quantity(Units.Rounded(change.SmallestProvable), unit),
            change.IsProved,
            new Quantity(Units.Rounded(change.Confidence.Percent), "%"),
            change.Words,
            calculation.Assumptions(change.Assumptions),
            calculation.Cite(SamplingFormulas.SmallestProvableChange.Source));
    }

    private static PooledAnswer Write(Analyte analyte, string where, Answer<PooledReading> pooled, Calculation calculation)
    {
        var by = calculation.Cite(CertaintyFormulas.PooledValue.Source);
        if (!pooled.TryGet(out var reading, out var reason))
        {
            return new PooledAnswer(Words.Analytes.IdOf(analyte), null, null, Fault.Of(where, reason), by);
        }

        calculation.Assume(reading.Assumptions);
        return new PooledAnswer(
            Words.Analytes.IdOf(analyte),
            new Quantity(reading.Reading.Amount.Number, Words.Units.IdOf(reading.Reading.Unit)),
            reading.Spread.OnLogScale ? new Quantity(Units.Rounded(reading.Spread.Relative.Percent), "%") : new Quantity(Units.Rounded(reading.Spread.PhUnits.PhUnits), "pH"),
            null,
            by);
    }
}
