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
    /// <summary>Indices that it computes from several readings, with their own classes; empty for most guides.</summary>
    public IReadOnlyList<GuideIndex> Indices { get; init; } = [];

    /// <summary>Limits of law that it prints beside its classes; empty for most guides.</summary>
    public IReadOnlyList<GuideCeiling> Ceilings { get; init; } = [];

    /// <summary>Rates every index that the soil test means to be read by.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="context">Crop and place.</param>
    /// <param name="working">Receives the formula and the look-up; null for none.</param>
    /// <returns>Each such index that has classes, with its rating or why there is none.</returns>
    public IReadOnlyList<(GuideIndex Index, Answer<Rating> Answer)> RateIndices(SoilTest test, RatingContext context, WorkingSheet? working = null) =>
        [.. Indices.Where(i => i.Scales.Count > 0 && i.IsReported(test)).Select(i => (i, i.Rate(this, test, context, working)))];

    /// <summary>The soil test held against the limits of law, apart from every class. A limit on something that was not measured so is left out.</summary>
    /// <param name="test">The soil test.</param>
    public IReadOnlyList<CeilingFinding> CeilingsFor(SoilTest test) => [.. Ceilings.Select(c => CeilingCheck.Of(this, c, test)).OfType<CeilingFinding>()];

    /// <summary>Rates one reading.</summary>
    /// <param name="test">The soil test it belongs to: texture, exchange capacity and the laboratory's lb/acre factor come from it.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="context">Crop and place; the texture is taken from the test when left open.</param>
    /// <param name="working">Receives the look-up; null for none.</param>
    /// <returns>The rating, or a refusal: the guide does not cover the analyte, the method or the context.</returns>
    public Answer<Rating> Rate(SoilTest test, Reading reading, RatingContext context, WorkingSheet? working = null)
    {
        if (reading.Amount.Kind == AmountKind.Missing)
        {
            return Answer<Rating>.Refused("not-reported", $"{Words.Analytes.IdOf(reading.Analyte)} was not reported.", "Ask the laboratory whether it was measured.");
        }

        RatingScale? found = null;
        foreach (var scale in Scales)
        {
            if (scale.Analyte == reading.Analyte && scale.Method.Covers(reading.Method) && scale.AppliesTo(test, context) && (found is null || Closeness(scale) > Closeness(found)))
            {
                found = scale;
            }
        }

        return found is not null
            ? RatingCalculation.Rate(this, found, test, reading, working)
            : Answer<Rating>.Refused(WhyNotRated.For(this, test, reading, context));
    }

    // A scale made for the very sample, crop, place, texture or soil goes before a general one.
    private static int Closeness(RatingScale scale) =>
        (scale.Timing is null ? 0 : 16) + (scale.CropGroup is null ? 0 : 8) + (scale.Subregion is null ? 0 : 4) + (scale.SoilGroups.Count == 0 ? 0 : 2) + (scale.Conditions.Count == 0 ? 0 : 1);
}
