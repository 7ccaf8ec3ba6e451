using System.Globalization;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Why no scale of a guide applies to a reading, and what the user can give so that one does.</summary>
internal static class WhyNotRated
{
    public static Refusal For(Guide guide, SoilTest test, Reading reading, RatingContext context)
    {
        var analyte = Words.Analytes.IdOf(reading.Analyte);
        var scales = guide.Scales.Where(s => s.Analyte == reading.Analyte).ToList();
        if (scales.Count == 0 && reading.Analyte == Analyte.Pb)
        {
            return new("extractable-lead", $"The guide {guide.Id} has no range for lead, and extractable lead is no measure of the lead in the soil.", "Ask the laboratory for total lead, and read only that on your health authority's table.");
        }

        if (scales.Count == 0)
        {
            return new("analyte-not-covered", $"The guide {guide.Id} has no limits for {analyte}.", "Choose a guide that rates it, or leave it unrated.");
        }

        var covering = scales.Where(s => s.Method.Covers(reading.Method)).ToList();
        return covering.Count == 0
            ? new(
                "method-not-covered",
                $"The guide {guide.Id} rates {analyte} by {string.Join(" or ", scales.Select(s => s.Method.ToString()).Distinct())}; this reading is {Describe(reading.Method)}.",
                "Choose a guide that covers this method, or ask the laboratory which it used. Numbers from different methods are different tests.")
            : For($"The guide {guide.Id}", covering, analyte, test, context);
    }

    /// <summary>The same for scales whose method is no question, such as those of an index.</summary>
    public static Refusal For(string publication, IReadOnlyList<RatingScale> scales, string rated, SoilTest test, RatingContext context) => new(
        "context-not-covered",
        $"{publication} ties its limits for {rated} to more than the value, and none of them applies here.",
        $"Give {string.Join(" and ", Needs(scales, test, context).Distinct())}.");

    private static IEnumerable<string> Needs(IReadOnlyList<RatingScale> scales, SoilTest test, RatingContext context)
    {
        var slopes = scales.Where(s => s.NeedsCec && RatingScale.CecOf(test) is null).ToList();
        if (slopes.Count > 0)
        {
            yield return "the cation exchange capacity (cec, meq/100g)";
        }

        foreach (var unmet in scales.SelectMany(s => s.Conditions.Select(c => (Scale: s, Condition: c))).Where(x => !x.Condition.IsMetBy(test, x.Scale)).GroupBy(x => x.Condition.Analyte).Where(g => slopes.Count == 0 || g.Key != Analyte.CationExchangeCapacity))
        {
            yield return $"{NameOf(unmet.Key, unmet.First())}: limits are held for {string.Join("; ", unmet.Select(x => x.Condition.ToString()).Distinct())}";
        }

        if (scales.Any(s => !s.FitsTexture(test, context)))
        {
            yield return $"the texture ({string.Join(", ", scales.SelectMany(s => s.SoilGroups).Distinct().Select(Words.SoilGroups.IdOf))})";
        }

        if (scales.Any(s => s.Subregion is not null))
        {
            yield return $"the subregion ({string.Join(", ", scales.Select(s => s.Subregion).OfType<string>().Distinct())})";
        }

        if (scales.Any(s => s.CropGroup is not null))
        {
            yield return $"a crop it has limits for ({string.Join(", ", scales.Select(s => s.CropGroup).OfType<string>().Distinct())})";
        }

        foreach (var timing in scales.Where(s => s.Timing != test.Timing).Select(s => s.Timing).OfType<SampleTiming>().Distinct())
        {
            yield return $"the timing of the sample ({Words.Timings.IdOf(timing)})";
        }

        foreach (var depth in scales.Where(s => !s.FitsDepth(test)).Select(s => s.Depth!).Distinct())
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"a sample from {depth.From.Inches:0.#} to {depth.To.Inches:0.#} in with its depth");
        }
    }

    private static string NameOf(Analyte analyte, (RatingScale Scale, ScaleCondition Condition) asks) => analyte switch
    {
        Analyte.CationExchangeCapacity => "the cation exchange capacity (cec, meq/100g)",
        Analyte.Ph => "the soil pH in water",
        Analyte.OrganicMatter => "the organic matter (%)",
        _ => $"{Words.Analytes.IdOf(analyte)} by {asks.Scale.Method} ({Words.Units.IdOf(asks.Condition.UnitOn(asks.Scale))})",
    };

    private static string Describe(Method method) => method.Extractant is { } extractant
        ? Words.Extractants.IdOf(extractant) + (method.Detection is { } detection ? ", " + Words.Detections.IdOf(detection) : ", detection not stated")
        : method.Procedure?.ToString() ?? "without a stated method";
}
