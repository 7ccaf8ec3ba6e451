using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>
/// Which cover crops fit a gap, best first, each reason with its grade, weight and source. A choice changes no need of the same plan: phosphorus is
/// recycled, never added, and nitrogen counts only once the stand is entered as previous.
/// </summary>
public static class CoverCropChoices
{
    private static readonly string[] UsualAims = ["cover", "weeds"];

    /// <summary>Aims that can be asked for.</summary>
    public static IReadOnlyCollection<string> Aims => CoverCropReasons.Aims;

    /// <summary>The choice for a gap.</summary>
    /// <param name="question">The gap, what the bed needs, the climate and the crops around it.</param>
    /// <param name="tables">The species and what is published on them.</param>
    public static CoverCropSelection For(CoverCropQuestion question, CoverCropTables tables)
    {
        var aims = (question.Aims.Count == 0 ? UsualAims : question.Aims).Concat(question.PhosphorusShort ? ["phosphorus"] : []).Distinct().ToList();
        var windows = new CoverWindows(question, tables);
        var reasons = new CoverCropReasons(question, tables, aims);
        var choices = new List<CoverCropChoice>();
        var excluded = new List<CoverCropExclusion>();
        foreach (var cover in tables.Species)
        {
            var (window, ofDates, against) = windows.Of(cover);
            var barriers = new[] { against, reasons.Barrier(cover) }.OfType<CoverCropReason>().ToList();
            if (window is null || barriers.Count > 0)
            {
                excluded.Add(new CoverCropExclusion(cover.Id, barriers));
            }
            else
            {
                choices.Add(Choose(cover, window, [.. ofDates, .. reasons.For(cover, window)], question, tables));
            }
        }

        return new CoverCropSelection(
            question.Gap,
            [.. choices.OrderByDescending(c => c.Score).ThenBy(c => c.CoverCrop.Id, StringComparer.Ordinal)],
            excluded,
            aims,
            question.Weights,
            question.Climate.Temperatures is { } temperatures ? DegreeDayFormulas.Over(question.Gap.From, question.Gap.To, temperatures, question.Climate.Basis) : null,
            TerminationRules.For(question, tables.TerminationZones),
            ClimateAssumptions.For(question));
    }

    internal static CoverCropValue? SeedRateOf(CoverCrop cover) => cover.ValueOf("broadcast-rate") ?? cover.ValueOf("drilled-rate");

    private static CoverCropChoice Choose(CoverCrop cover, CoverWindow window, IReadOnlyList<CoverCropReason> reasons, CoverCropQuestion question, CoverCropTables tables)
    {
        var numbers = CoverCropEstimates.For(cover, window, tables);
        var seed = SeedRateOf(cover);
        return new CoverCropChoice(
            cover,
            reasons.Sum(r => r.Points),
            [.. reasons.OrderByDescending(r => Math.Abs(r.Points))],
            window,
            numbers,
            SeedFor(seed, question.Area),
            seed,
            numbers.DryMatter is { } matter
                ? new Cited<string>($"{PlainNumber.Range(matter.Low.PoundsPerAcre, matter.High.PoundsPerAcre)} lb of dry matter an acre: {matter.Basis}", matter.Source)
                : null,
            CoverCropPhosphorus.Words(numbers, cover.ValueOf("phosphorus-release-threshold"), question),
            CoverCropNitrogen.Words(cover, numbers, question.Area));
    }

    // The high end: a thin stand on a small bed costs more than a handful of seed.
    private static Mass? SeedFor(CoverCropValue? seed, Area? area) =>
        area is { } ground && seed is { Unit: "lb/acre", Most: { } rate }
            ? MassPerArea.FromPoundsPerAcre((double)rate).On(ground)
            : null;
}
