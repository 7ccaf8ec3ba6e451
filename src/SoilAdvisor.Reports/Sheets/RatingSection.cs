using System.Globalization;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Rulers;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>What the soil tests say: a table for a bed, and one for the farm where the beds stand side by side.</summary>
internal static class RatingSection
{
    public const string Anchor = "soil-tests";

    private const int BedsNamed = 8;

    /// <summary>The ratings of one bed.</summary>
    public static IEnumerable<Block> Of(BedPlan bed) => bed.Ratings.Count == 0
        ? []
        : [new Heading(4, "What the soil test says"), new RatingTable(Lines(bed))];

    /// <summary>The ratings of one bed as lines.</summary>
    public static IReadOnlyList<RatedLine> Lines(BedPlan bed) => [.. bed.Ratings.Select(r => Line(bed, r))];

    /// <summary>Whether beds stand side by side; one bed says it all itself.</summary>
    public static bool IsShown(FarmPlan plan) => plan.Beds.Count > 1 && plan.Beds.Any(b => b.Ratings.Count > 0);

    /// <summary>The ratings of a farm, all results on one scale under one ruler; nothing where one bed says it all.</summary>
    public static IReadOnlyList<Block> Of(FarmPlan plan)
    {
        if (!IsShown(plan))
        {
            return [];
        }

        var scales = plan.Beds
            .SelectMany(bed => bed.Ratings.Select(rating => (bed, rating)))
            .GroupBy(r => r.rating.Analyte)
            .SelectMany(analyte => analyte.GroupBy(r => (r.rating.Scale, r.rating.Cec)))
            .Select(scale => (IReadOnlyList<RatedLine>)[.. scale.GroupBy(r => r.bed.Bed.SoilTest.Id).Select(sample => Line(sample.First().bed, sample.First().rating, Sample(sample.Key, [.. sample.Select(s => s.bed.Bed.Id)])))])
            .ToList();
        return
        [
            new Heading(2, "The soil tests, side by side", Anchor),
            new Paragraph(new Sentence("The class is the guide's word. The percentage says how likely the ground belongs to it, by published spreads of results; \"likely\" says where its true value lies four times in five.", Citation.OurJudgement)),
            new ComparisonTable(scales),
        ];
    }

    private static RatedLine Line(BedPlan bed, Rating rating, string? sample = null) =>
        bed.Certainties.TryGetValue(rating, out var certainty) && certainty.TryGet(out var known, out _)
            ? new RatedLine(
                rating,
                known.Words,
                LikelyRange.Of(rating, known.Spread) is { } range ? new Whisker(range.Low, range.High) : null,
                [rating.Source, .. known.Spread.Assumptions.Select(a => a.Source)],
                sample)
            : new RatedLine(rating, null, null, [rating.Source], sample);

    private static string Sample(string test, IReadOnlyList<string> beds) => beds.Count > BedsNamed
        ? string.Create(CultureInfo.InvariantCulture, $"{test} ({beds.Count} beds)")
        : $"{test} ({(beds.Count == 1 ? "bed" : "beds")} {string.Join(", ", beds)})";
}
