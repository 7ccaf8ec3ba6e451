using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning;

/// <summary>
/// Finds the guide that fits the soil tests. A guide that was asked for is taken when it covers the method of their phosphorus or potassium,
/// even where it must still be told the part of its region or a crop; otherwise the one that rates most of their phosphorus and potassium,
/// then the one written for the region, then calibrated on vegetables, then with rates that may be read with it, then the one that rates most of
/// the other readings. Only between equals does the one that was read go before the one recalled. The order is ours and is said with the choice.
/// </summary>
public static class GuideChoice
{
    /// <summary>The guide for these tests.</summary>
    /// <param name="tests">The soil tests; at least one.</param>
    /// <param name="asked">The guide asked for; null for none.</param>
    /// <param name="region">ISO 3166-2 code; null when not said.</param>
    /// <param name="crops">Ids of the crops.</param>
    /// <param name="tables">The reference tables.</param>
    /// <returns>The guide, why, and the others; or a refusal that names the guides that would do.</returns>
    public static Answer<GuideSelection> For(IReadOnlyList<SoilTest> tests, Guide? asked, string? region, IReadOnlyList<string> crops, Tables tables)
    {
        var fits = tables.Guides.Values
            .Select(g => GuideFit.Of(g, tests, region, crops, tables))
            .Where(f => f.Main > 0)
            .Order()
            .ToList();
        if (asked is not null)
        {
            return Asked(GuideFit.Of(asked, tests, region, crops, tables), fits, tests, crops, tables);
        }

        return fits is [var best, ..]
            ? Answer<GuideSelection>.Given(new GuideSelection(best.Guide, best.Why(tests.Count, fits.Skip(1).FirstOrDefault()), Others(fits, best.Guide), Assumptions(best.Guide, crops, tables)))
            : Answer<GuideSelection>.Refused(
                "no-guide-covers",
                $"No guide has limits for phosphorus or potassium by {Methods(tests)}.",
                $"Ask the laboratory which extractant it used. Guides are held for: {string.Join("; ", tables.Guides.Values.Select(g => $"{g.Id} ({MethodsOf(g)})"))}.");
    }

    /// <summary>
    /// The guide for a nitrate test that holds neither phosphorus nor potassium, ranked in the same order. One that rates it goes before one that
    /// must still be told the crop or the layer.
    /// </summary>
    /// <param name="test">The nitrate test.</param>
    /// <param name="region">ISO 3166-2 code; null when not said.</param>
    /// <param name="crops">Ids of the crops.</param>
    /// <param name="tables">The reference tables.</param>
    public static Answer<GuideSelection> ForNitrateTest(SoilTest test, string? region, IReadOnlyList<string> crops, Tables tables)
    {
        var fits = tables.Guides.Values.Select(g => GuideFit.Of(g, [test], region, crops, tables)).Where(f => f.Covered > 0).OrderByDescending(f => f.Rated > 0).ThenBy(f => f).ToList();
        return fits is [var best, ..]
            ? Answer<GuideSelection>.Given(new GuideSelection(best.Guide, best.Why(1, fits.Skip(1).FirstOrDefault()), Others(fits, best.Guide), Assumptions(best.Guide, crops, tables)))
            : For([test], null, region, crops, tables);
    }

    /// <summary>Whether none of the readings is phosphorus or potassium, by which a guide is otherwise chosen.</summary>
    /// <param name="test">The soil test.</param>
    public static bool HoldsNeitherPhosphorusNorPotassium(SoilTest test) => !test.Readings.Any(r => GuideFit.IsMain(r.Analyte));

    /// <summary>Guides to offer where lime spoils the acid extractants: those that rate phosphorus by Olsen, of the region first.</summary>
    /// <param name="region">ISO 3166-2 code; null when not said.</param>
    /// <param name="tables">The reference tables.</param>
    /// <returns>Their ids.</returns>
    public static IReadOnlyList<string> OlsenGuides(string? region, Tables tables) =>
    [
        .. tables.Guides.Values
            .Where(g => g.Scales.Any(s => s is { Analyte: Analyte.P, Method.Extractant: Extractant.Olsen }))
            .OrderBy(g => region is not null && g.Regions.Contains(region, StringComparer.OrdinalIgnoreCase) ? 0 : 1)
            .ThenBy(g => g.CalibratedOn == "vegetables" ? 0 : 1)
            .ThenBy(g => g.Id, StringComparer.Ordinal)
            .Select(g => g.Id),
    ];

    // Grain and dry seed are field crops; everything else that is grown here is a vegetable. No crop named is taken as vegetables, for whom this is made.
    private static List<Assumption> Assumptions(Guide guide, IReadOnlyList<string> crops, Tables tables) =>
        guide.CalibratedOn == "field-crops" && (crops.Count == 0 || crops.Any(id => tables.Crops.TryGetValue(id, out var crop) && crop.EdiblePart is not ("grain" or "dry seed")))
            ? [new Assumption("field-crop-limits", $"The limits of {guide.Id} were calibrated on field crops. Vegetables often need more than field crops: a class at or just above target may still be short for them.", Citation.OurJudgement)]
            : [];

    private static Answer<GuideSelection> Asked(GuideFit asked, List<GuideFit> fits, IReadOnlyList<SoilTest> tests, IReadOnlyList<string> crops, Tables tables) => asked.MainCovered > 0 || (asked.Covered > 0 && fits.Count == 0)
        ? Answer<GuideSelection>.Given(new GuideSelection(asked.Guide, "You named this guide.", Others(fits, asked.Guide), Assumptions(asked.Guide, crops, tables)))
        : Answer<GuideSelection>.Refused(
            "guide-does-not-cover",
            $"The guide {asked.Guide.Id} has no limits for phosphorus or potassium by {Methods(tests)}; it covers {MethodsOf(asked.Guide)}.",
            fits.Count > 0 ? $"These guides cover it: {string.Join(", ", Others(fits, asked.Guide))}." : "No guide held covers it. Ask the laboratory which extractant it used.");

    private static List<string> Others(IEnumerable<GuideFit> fits, Guide chosen) => [.. fits.Select(f => f.Guide.Id).Where(id => id != chosen.Id)];

    private static string Methods(IReadOnlyList<SoilTest> tests)
    {
        var methods = tests.SelectMany(t => t.Readings).Where(r => GuideFit.IsMain(r.Analyte)).Select(r => r.Method).Distinct().Select(Words).ToList();
        return methods.Count == 0 ? "any method: the soil tests hold neither" : string.Join(" or ", methods);
    }

    private static string Words(Method method) =>
        (method.Extractant is { } extractant ? Agronomy.SoilTests.Words.Extractants.IdOf(extractant) : "an extractant that was not named")
        + (method.Detection is { } detection ? $" ({Agronomy.SoilTests.Words.Detections.IdOf(detection)})" : " (detection not stated)");

    private static string MethodsOf(Guide guide) =>
        string.Join(" or ", guide.Scales.Where(s => GuideFit.IsMain(s.Analyte)).Select(s => s.Method.ToString()).Distinct(StringComparer.Ordinal).DefaultIfEmpty("neither"));
}
