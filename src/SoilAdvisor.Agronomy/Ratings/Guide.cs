using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>A published interpretation guide: who issued it, for where and for what, and its scales.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">Title as printed.</param>
/// <param name="Institution">Who issued it.</param>
/// <param name="Regions">ISO 3166-2 codes it was written for.</param>
/// <param name="Crops">Crops it covers, in words.</param>
/// <param name="CalibratedOn">What its limits were calibrated on: vegetables, field-crops or general.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Notes">Decisions on conflicting cells; null for none.</param>
/// <param name="Scales">Its scales.</param>
public sealed record Guide(
    string Id,
    string Title,
    string Institution,
    IReadOnlyList<string> Regions,
    string Crops,
    string CalibratedOn,
    Citation Source,
    string? Notes,
    IReadOnlyList<RatingScale> Scales)
{
    /// <summary>Rates one reading.</summary>
    /// <param name="test">The soil test it belongs to: texture, exchange capacity and the laboratory's lb/acre factor come from it.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="context">Crop and place; texture and exchange capacity are taken from the test when left open.</param>
    /// <param name="working">Receives the look-up; null for none.</param>
    /// <returns>The rating, or a refusal: the guide does not cover the analyte, the method or the context.</returns>
    public Answer<Rating> Rate(SoilTest test, Reading reading, RatingContext context, WorkingSheet? working = null)
    {
        if (reading.Amount.Kind == AmountKind.Missing)
        {
            return Answer<Rating>.Refused("not-reported", $"{Words.Analytes.IdOf(reading.Analyte)} was not reported.", "Ask the laboratory whether it was measured.");
        }

        var full = Complete(test, context);
        RatingScale? found = null;
        var (coversAnalyte, coversMethod) = (false, false);
        foreach (var scale in Scales)
        {
            if (scale.Analyte != reading.Analyte)
            {
                continue;
            }

            coversAnalyte = true;
            if (!scale.Method.Covers(reading.Method))
            {
                continue;
            }

            coversMethod = true;
            if (scale.AppliesTo(full) && (found is null || Closeness(scale) > Closeness(found)))
            {
                found = scale;
            }
        }

        return found is not null
            ? RatingCalculation.Rate(this, found, test, reading, full.Cec, working)
            : Answer<Rating>.Refused(WhyNot(reading, coversAnalyte, coversMethod));
    }

    private static RatingContext Complete(SoilTest test, RatingContext context) => context with
    {
        SoilGroup = context.SoilGroup ?? test.SoilGroup,
        Cec = context.Cec ?? (test.Of(Analyte.CationExchangeCapacity) is { Amount: { Kind: AmountKind.Measured } amount } ? amount.Number : null),
    };

    // A scale made for the very crop, texture or place goes before a general one.
    private static int Closeness(RatingScale scale) =>
        (scale.CropGroup is null ? 0 : 4) + (scale.Subregion is null ? 0 : 2) + (scale.SoilGroups.Count == 0 ? 0 : 1);

    private Refusal WhyNot(Reading reading, bool coversAnalyte, bool coversMethod)
    {
        var analyte = Words.Analytes.IdOf(reading.Analyte);
        if (!coversAnalyte)
        {
            return new("analyte-not-covered", $"The guide {Id} has no limits for {analyte}.", "Choose a guide that rates it, or leave it unrated.");
        }

        var scales = Scales.Where(s => s.Analyte == reading.Analyte).ToList();
        if (!coversMethod)
        {
            return new(
                "method-not-covered",
                $"The guide {Id} rates {analyte} by {string.Join(" or ", scales.Select(s => s.Method.ToString()).Distinct())}; this reading is {Describe(reading.Method)}.",
                "Choose a guide that covers this method, or ask the laboratory which it used. Numbers from different methods are different tests.");
        }

        var needs = new List<string>();
        if (scales.Any(s => s.NeedsCec))
        {
            needs.Add("the cation exchange capacity (cec, meq/100g)");
        }

        if (scales.Any(s => s.SoilGroups.Count > 0))
        {
            needs.Add("the texture");
        }

        if (scales.Any(s => s.Subregion is not null))
        {
            needs.Add($"the subregion ({string.Join(", ", scales.Select(s => s.Subregion).OfType<string>().Distinct())})");
        }

        if (scales.Any(s => s.CropGroup is not null))
        {
            needs.Add($"a crop it has limits for ({string.Join(", ", scales.Select(s => s.CropGroup).OfType<string>().Distinct())})");
        }

        return new("context-not-covered", $"The guide {Id} has several limits for {analyte} and cannot tell which apply.", $"Give {string.Join(" and ", needs)}.");
    }

    private static string Describe(Method method) => method.Extractant is { } extractant
        ? Words.Extractants.IdOf(extractant) + (method.Detection is { } detection ? ", " + Words.Detections.IdOf(detection) : ", detection not stated")
        : method.Procedure?.ToString() ?? "without a stated method";
}
