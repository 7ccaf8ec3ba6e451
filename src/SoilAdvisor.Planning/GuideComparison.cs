using System.Globalization;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning;

/// <summary>
/// One soil test by several guides: what the neighbouring state would say. Each guide rates by its own limits for its own region; that
/// they differ is no error of either.
/// </summary>
public static class GuideComparison
{
    /// <summary>How a guide reads a soil test.</summary>
    /// <param name="guide">The guide.</param>
    /// <param name="test">The soil test.</param>
    /// <param name="context">Crop and place.</param>
    public static GuideView Read(Guide guide, SoilTest test, RatingContext context)
    {
        var ratings = new List<Rating>();
        var refused = new List<(Reading, Refusal)>();
        foreach (var reading in test.Readings)
        {
            if (guide.Rate(test, reading, context).TryGet(out var rating, out var why))
            {
                ratings.Add(rating);
            }
            else
            {
                refused.Add((reading, why));
            }
        }

        return new GuideView(guide, ratings, refused);
    }

    /// <summary>Every other guide with limits for an extractant of the test: those that rate its phosphorus or potassium, nearest first, then the rest by id.</summary>
    /// <param name="chosen">The guide that the test is read with.</param>
    /// <param name="test">The soil test.</param>
    /// <param name="tables">The reference tables.</param>
    public static IReadOnlyList<Guide> Others(GuideSelection chosen, SoilTest test, Tables tables)
    {
        var near = chosen.Others.Select(id => tables.Guides[id]).ToList();
        return [.. near, .. tables.Guides.Values.Where(g => g.Id != chosen.Guide.Id && !near.Contains(g) && Covers(g, test)).OrderBy(g => g.Id, StringComparer.Ordinal)];
    }

    /// <summary>What the guides agree on and where they part, reading by reading; readings that one guide alone rates are left out.</summary>
    /// <param name="views">The guides' readings of one soil test.</param>
    public static IReadOnlyList<GuideAgreement> Agreements(IReadOnlyList<GuideView> views) =>
    [
        .. views.SelectMany(v => v.Ratings.Select(r => (v.Guide, Rating: r)))
            .Where(r => r.Rating.Standing != Standing.Information)
            .GroupBy(r => r.Rating.Analyte)
            .Where(g => g.Select(r => r.Guide.Id).Distinct().Count() > 1)
            .Select(g => Of(g.Key, [.. g.GroupBy(r => r.Rating.Standing, r => r.Guide.Id).OrderBy(s => s.Key)])),
    ];

    private static bool Covers(Guide guide, SoilTest test) =>
        test.Readings.Any(r => r.Method.Extractant is not null && guide.Scales.Any(s => s.Analyte == r.Analyte && s.Method.Covers(r.Method)));

    private static GuideAgreement Of(Analyte analyte, List<IGrouping<Standing, string>> standings)
    {
        var name = Words.Analytes.IdOf(analyte);
        return standings is [var all]
            ? new GuideAgreement(analyte, true, string.Create(CultureInfo.InvariantCulture, $"{name}: all {all.Count()} guides that rate it put it {Place(all.Key)}."))
            : new GuideAgreement(analyte, false, $"{name}: {string.Join("; ", standings.Select(s => $"{Place(s.Key)} by {string.Join(", ", s)}"))}.");
    }

    private static string Place(Standing standing) => standing switch
    {
        Standing.Below => "below its target",
        Standing.Target => "at its target",
        Standing.Above => "above its target",
        _ => "so high that none should be added",
    };
}
