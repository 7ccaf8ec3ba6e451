using System.Globalization;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning;

/// <summary>How well a guide fits the soil tests of a farm. Sorts with the best first; the id decides between equals.</summary>
/// <param name="Guide">The guide.</param>
/// <param name="Main">Readings of phosphorus and potassium that it rates.</param>
/// <param name="Rated">All readings that it rates.</param>
/// <param name="MainCovered">Readings of phosphorus and potassium whose method it covers, also where it cannot yet tell which of its limits apply.</param>
/// <param name="Covered">The same of all readings.</param>
/// <param name="InRegion">True when it, or a rate table that may be read with it, was written for the region.</param>
/// <param name="Calibration">0 vegetables, 1 general, 2 field crops.</param>
/// <param name="CropsWithRates">Crops with a rate in a table that may be read with it.</param>
/// <param name="OwnRegion">True when the guide itself was written for the region.</param>
/// <param name="Seen">True when its limits were read rather than recalled.</param>
internal sealed record GuideFit(Guide Guide, int Main, int Rated, int MainCovered, int Covered, bool InRegion, int Calibration, int CropsWithRates, bool OwnRegion, bool Seen) : IComparable<GuideFit>
{
    public static bool IsMain(Analyte analyte) => analyte is Analyte.P or Analyte.K;

    public static GuideFit Of(Guide guide, IReadOnlyList<SoilTest> tests, string? region, IReadOnlyList<string> crops, Tables tables)
    {
        var (main, rated, mainCovered, covered) = (0, 0, 0, 0);
        foreach (var test in tests)
        {
            foreach (var reading in test.Readings)
            {
                // A refusal takes words to write; most guides can be passed over by the method alone.
                if (!guide.Scales.Any(s => s.Analyte == reading.Analyte && s.Method.Covers(reading.Method)))
                {
                    continue;
                }

                var rating = guide.Rate(test, reading, new RatingContext(crops.Count > 0 ? crops[0] : null, null, null));
                if (rating.IsGiven)
                {
                    rated++;
                    main += IsMain(reading.Analyte) ? 1 : 0;
                }

                if (rating.IsGiven || rating.Reason.Code == "context-not-covered")
                {
                    covered++;
                    mainCovered += IsMain(reading.Analyte) ? 1 : 0;
                }
            }
        }

        var pairs = tables.RateTables.Values.Where(t => t.PairWith(guide.Id) is not null).ToList();
        return new GuideFit(
            guide,
            main,
            rated,
            mainCovered,
            covered,
            region is not null && guide.Regions.Concat(pairs.SelectMany(t => t.Regions)).Contains(region, StringComparer.OrdinalIgnoreCase),
            guide.CalibratedOn switch { "vegetables" => 0, "general" => 1, _ => 2 },
            crops.Distinct(StringComparer.Ordinal).Count(c => pairs.Any(t => t.Kind == Agronomy.Crops.RateTableKind.BuildUpAndMaintenance || t.Rates.Any(r => r.Crop == c))),
            region is not null && guide.Regions.Contains(region, StringComparer.OrdinalIgnoreCase),
            guide.Source.Evidence == Evidence.Seen);
    }

    public int CompareTo(GuideFit? other) => other is null ? -1 : Rank(this).CompareTo(Rank(other)) is var order && order != 0 ? order : string.CompareOrdinal(Guide.Id, other.Guide.Id);

    /// <summary>Why this one, in a plain sentence.</summary>
    /// <param name="tests">How many soil tests there are.</param>
    /// <param name="next">The guide that came next; null for none.</param>
    public string Why(int tests, GuideFit? next)
    {
        List<string> reasons =
        [
            MainCovered == 0
                ? "it has limits for a nitrate test (the soil test holds neither phosphorus nor potassium)"
                : string.Create(CultureInfo.InvariantCulture, $"it rates {Main} readings of phosphorus and potassium in {tests} soil {(tests == 1 ? "test" : "tests")} by the method the laboratory used"),
        ];
        if (InRegion)
        {
            reasons.Add("it or a rate table read with it was written for the region");
        }

        reasons.Add(Calibration switch { 0 => "it was calibrated on vegetables", 1 => "it is a general guide", _ => "no guide calibrated on vegetables fits better, although this one was calibrated on field crops" });
        if (CropsWithRates > 0)
        {
            reasons.Add("a rate table may be read with it");
        }

        return $"No guide was named. {Guide.Id} was taken because {string.Join(", ", reasons)}.{(next is null ? "" : $" {next.Guide.Id} came next: {next.WhyItLostTo(this)}.")}";
    }

    // The first point of the ranking in which the two differ; evidence is the last before the name.
    private string WhyItLostTo(GuideFit winner) => this switch
    {
        _ when Main != winner.Main => string.Create(CultureInfo.InvariantCulture, $"it rates {Main} of these readings"),
        _ when InRegion != winner.InRegion => "neither it nor a rate table read with it was written for the region",
        _ when Calibration != winner.Calibration => Calibration == 1 ? "it is a general guide" : "it was calibrated on field crops",
        _ when CropsWithRates != winner.CropsWithRates => "fewer of the crops have a rate that may be read with it",
        _ when OwnRegion != winner.OwnRegion => "its limits were not written for the region",
        _ when Rated != winner.Rated => "it rates fewer of the other readings",
        _ when Seen != winner.Seen => "its limits are from memory",
        _ => "it fits as well, and the order of the names decided",
    };

    private static (int, bool, int, int, bool, int, bool) Rank(GuideFit fit) =>
        (-fit.Main, !fit.InRegion, fit.Calibration, -fit.CropsWithRates, !fit.OwnRegion, -fit.Rated, !fit.Seen);
}
