using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>Writes out what is doubtful about soil tests. What is impossible was refused when the test was read.</summary>
internal static class SuspicionWriter
{
    /// <summary>The suspicions of a soil test; null for none.</summary>
    public static IReadOnlyList<SuspicionAnswer>? Of(SoilTest test, Calculation calculation) => Of([test], calculation);

    /// <summary>The suspicions of several soil tests; null for none.</summary>
    public static IReadOnlyList<SuspicionAnswer>? Of(IEnumerable<SoilTest> tests, Calculation calculation)
    {
        var found = tests
            .SelectMany(t => SoilTestSuspicions.Of(t, calculation.Tables.Cations))
            .Where(s => s.Severity == Severity.Suspicion)
            .Select(s => Write(s, calculation))
            .ToList();
        return found.Count > 0 ? found : null;
    }

    private static SuspicionAnswer Write(Suspicion suspicion, Calculation calculation) => new(
        suspicion.Readings[0].Where,
        suspicion.Readings.Count > 1 ? [.. suspicion.Readings.Skip(1).Select(r => r.Where)] : null,
        suspicion.Code,
        suspicion.Message,
        suspicion.Suggestion,
        calculation.Cite(suspicion.Source));
}
