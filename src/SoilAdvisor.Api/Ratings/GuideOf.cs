using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Planning;

namespace SoilAdvisor.Api.Ratings;

/// <summary>The guide that a request is answered with.</summary>
internal static class GuideOf
{
    /// <summary>The guide asked for, or the nearest that covers the tests; null after a refusal at its place.</summary>
    public static GuideSelection? Choose(IReadOnlyList<SoilTest> tests, string? guide, string? region, IReadOnlyList<string> crops, Calculation calculation)
    {
        var asked = Read(guide, calculation);
        if (asked is null && !string.IsNullOrWhiteSpace(guide))
        {
            return null;
        }

        var answer = asked is null && tests is [var only] && NitrateTest.IsMeantBy(only) && GuideChoice.HoldsNeitherPhosphorusNorPotassium(only)
            ? GuideChoice.ForNitrateTest(only, region, crops, calculation.Tables)
            : GuideChoice.For(tests, asked, region, crops, calculation.Tables);
        if (answer.TryGet(out var chosen, out var reason))
        {
            calculation.Assume(chosen.Assumptions);
            return chosen;
        }

        calculation.Faults.Add("/guide", reason);
        return null;
    }

    /// <summary>A guide by its id; null when none was named or it is unknown.</summary>
    public static Guide? Read(string? guide, Calculation calculation) => Named.Read(guide, "/guide", calculation.Tables.Guide, calculation.Faults);
}
