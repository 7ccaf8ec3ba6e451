using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Ratings;

/// <summary>Names the guides that do rate a reading by its method, where one does not.</summary>
internal static class GuideCoverage
{
    /// <summary>The refusal with those guides in its suggestion.</summary>
    public static Refusal Offer(Refusal refusal, Reading reading, Tables tables)
    {
        if (refusal.Code is not ("method-not-covered" or "analyte-not-covered"))
        {
            return refusal;
        }

        var covering = tables.Guides.Values.Where(g => Covers(g, reading)).Select(g => g.Id).ToList();
        var offer = covering.Count > 0
            ? $"Guides here that cover it: {string.Join(", ", covering)}."
            : "No guide here covers it.";
        return refusal with { Suggestion = $"{offer} {refusal.Suggestion}" };
    }

    private static bool Covers(Guide guide, Reading reading) => guide.Scales.Any(s => s.Analyte == reading.Analyte && s.Method.Covers(reading.Method));
}
