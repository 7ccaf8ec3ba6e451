using SoilAdvisor.Agronomy.Cations;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>Likely mix-ups in a soil test. They change no number: a suspicion is said, an impossibility refuses its first reading.</summary>
public static class SoilTestSuspicions
{
    /// <summary>Everything doubtful about a soil test, the impossible first.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="rules">Published rules for the sum of cations.</param>
    public static IReadOnlyList<Suspicion> Of(SoilTest test, CationRules rules) =>
    [
        .. new[]
        {
            BufferDoubts.Above(test),
            BufferDoubts.Below(test),
            BufferDoubts.UnderTheSoil(test),
            CationDoubts.AgainstCapacity(test, rules),
            CationDoubts.MagnesiumAboveCalcium(test),
            UnitDoubts.IndexAsConcentration(test),
            UnitDoubts.TinyCalcium(test),
            UnitDoubts.OxidePerHectare(test),
            UnitDoubts.FractionOfOrganicMatter(test),
            UnitDoubts.NitrateCountedWhole(test),
            UnitDoubts.Microsiemens(test),
            UnitDoubts.UnusualPh(test),
        }.OfType<Suspicion>().OrderByDescending(s => s.Severity),
    ];

    /// <summary>What cannot be in this soil test; empty when nothing. Each refuses its first reading.</summary>
    /// <param name="test">The soil test.</param>
    public static IReadOnlyList<Suspicion> ImpossibleIn(SoilTest test) => [.. new[] { BufferDoubts.Above(test) }.OfType<Suspicion>().Where(s => s.Severity == Severity.Impossible)];
}
