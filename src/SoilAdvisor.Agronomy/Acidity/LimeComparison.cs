using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Several methods side by side for one soil. They are never averaged.</summary>
/// <param name="Methods">Those that the report may enter, best first: seen before recalled, then those of the region. Empty where no lime is needed.</param>
public sealed record LimeComparison(IReadOnlyList<ComparedLime> Methods)
{
    private static readonly Length Common = Length.FromInches(6);

    /// <summary>How far states differ on the same soil, as published.</summary>
    public static Cited<string> Spread { get; } = new(
        "For the same six soils, 40 recommendations of 34 states (to pH 6.5, 15 cm deep) had medians from 2242 to 9079 kg/ha by soil and differed with a coefficient of variation of 41 to 73 %. Read each number with its method and region; never average them.",
        new Citation("jones2025", null, Evidence.Seen));

    /// <summary>Every method that the report may enter. Refuses where the soil pH is not known.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="target">The target pH.</param>
    /// <param name="methods">Published methods.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not known.</param>
    /// <param name="recentLime">Lime of the past year; null when none was named.</param>
    public static Answer<LimeComparison> For(SoilTest test, TargetPh target, IEnumerable<LimeMethod> methods, string? region, RecentLime? recentLime = null) =>
        PhScales.InWater(test, region, null).Select(ph =>
        {
            var question = new LimeQuestion(test, target, ph, region, recentLime, ph.Assumptions, null);
            return new LimeComparison(question.Ph >= target.Value ? [] : [.. Fitting(question, [.. methods]).Select(m => Compare(question.Again(), m))]);
        });

    private static IReadOnlyList<LimeMethod> Fitting(LimeQuestion question, List<LimeMethod> methods) => LimeMethodChoice.Fitting(question, methods) is { Count: > 0 } fitting
        ? fitting
        : question.Test.Of(Analyte.BufferPh) is { Amount.Kind: not AmountKind.Missing } ? [] : LimeMethodChoice.Rough(question, methods);

    private static ComparedLime Compare(LimeQuestion question, LimeMethod method)
    {
        var requirement = LimeRequirementCalculation.By(question, method);
        return new ComparedLime(method, requirement, requirement.IsGiven ? LimeRequirementCalculation.ForDepth(requirement.Value, Common) : null);
    }
}
