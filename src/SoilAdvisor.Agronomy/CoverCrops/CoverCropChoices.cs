using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>
/// Which cover crops fit a gap, best first, each reason with its points and source. A choice changes no need of the same plan: phosphorus is
/// recycled, never added, and nitrogen counts only once the stand is entered as previous.
/// </summary>
public static class CoverCropChoices
{
    private static readonly Dictionary<string, (string Property, string Words)[]> FunctionsByAim = new(StringComparer.Ordinal)
    {
        ["phosphorus"] = [("function-phosphorus", "making soil phosphorus available")],
        ["nitrogen"] = [("function-nitrogen-source", "bringing nitrogen")],
        ["weeds"] = [("function-weeds", "smothering weeds")],
        ["cover"] = [("function-cover-fast", "covering the soil fast"), ("function-erosion", "holding the soil")],
        ["compaction"] = [("function-compaction", "loosening the soil")],
        ["pollinators"] = [("function-pollinators", "feeding pollinators")],
    };

    private static readonly string[] UsualAims = ["cover", "weeds"];

    private static readonly string[] Grades = ["no use", "fair", "good", "excellent"];

    /// <summary>Aims that can be asked for.</summary>
    public static IReadOnlyCollection<string> Aims => FunctionsByAim.Keys;

    /// <summary>The choice for a gap.</summary>
    /// <param name="gap">Time the bed stands free.</param>
    /// <param name="all">Cover crops to choose from.</param>
    /// <param name="aims">What they are wanted for, from <see cref="Aims"/>; empty takes cover and weeds. Others add nothing.</param>
    /// <param name="frost">Usual frost dates; null when not said.</param>
    /// <param name="lastCrop">Crop before the gap; null when not known.</param>
    /// <param name="nextCrop">Crop after the gap; null when not known.</param>
    /// <param name="area">Ground to sow; null without a bed.</param>
    /// <param name="phosphorusShort">True when the bed needs phosphorus: the aim phosphorus is then counted too.</param>
    /// <param name="p2o5Short">By how much P2O5 it is short; null when not known.</param>
    public static CoverCropSelection For(
        Gap gap,
        IEnumerable<CoverCrop> all,
        IReadOnlyList<string> aims,
        FrostDates? frost,
        Crop? lastCrop,
        Crop? nextCrop,
        Area? area,
        bool phosphorusShort,
        MassPerArea? p2o5Short)
    {
        var wanted = (aims.Count == 0 ? UsualAims : aims).Concat(phosphorusShort ? ["phosphorus"] : []).Distinct().ToList();
        var choices = new List<CoverCropChoice>();
        var excluded = new List<CoverCropExclusion>();
        foreach (var cover in all)
        {
            var (fit, against) = CoverCropFit.Of(cover, gap, frost);
            var reasons = new[] { against, DiseaseBridge(cover, lastCrop, nextCrop) }.OfType<CoverCropReason>().ToList();
            if (fit is null || reasons.Count > 0)
            {
                excluded.Add(new CoverCropExclusion(cover.Id, reasons));
            }
            else
            {
                choices.Add(Choose(cover, fit, wanted, lastCrop, nextCrop, area, phosphorusShort, p2o5Short));
            }
        }

        return new CoverCropSelection(
            gap,
            [.. choices.OrderByDescending(c => c.Score).ThenBy(c => c.CoverCrop.Id, StringComparer.Ordinal)],
            excluded);
    }

    private static CoverCropChoice Choose(
        CoverCrop cover,
        CoverCropFit fit,
        IReadOnlyList<string> aims,
        Crop? lastCrop,
        Crop? nextCrop,
        Area? area,
        bool phosphorusShort,
        MassPerArea? p2o5Short)
    {
        CoverCropReason[] reasons =
        [
            .. fit.Reasons,
            .. aims.SelectMany(aim => Service(cover, aim)),
            .. aims.Contains("phosphorus") ? CoverCropPhosphorus.Doubts(cover) : [],
            .. SameFamily(cover, lastCrop, nextCrop),
            .. Printed(cover),
        ];
        var seed = cover.ValueOf("broadcast-rate") ?? cover.ValueOf("drilled-rate");
        return new CoverCropChoice(
            cover,
            reasons.Sum(r => r.Points),
            [.. reasons.OrderByDescending(r => Math.Abs(r.Points))],
            fit.Sow,
            fit.KillBy,
            fit.DaysNeeded,
            SeedFor(seed, area),
            seed,
            cover.ValueOf("dry-matter") is { } matter ? new Cited<string>($"{CoverCropPhosphorus.Range(matter)} {matter.Unit} of dry matter in a full stand", matter.Source) : null,
            CoverCropPhosphorus.Words(cover, area, phosphorusShort, p2o5Short),
            CoverCropNitrogen.Words(cover, area));
    }

    private static IEnumerable<CoverCropReason> Service(CoverCrop cover, string aim)
    {
        foreach (var (property, words) in FunctionsByAim.GetValueOrDefault(aim, []))
        {
            if (cover.ValueOf(property) is { Value: { } grade } value)
            {
                yield return new($"Rated {Grades[Math.Clamp((int)grade, 0, 3)]} ({PlainNumber.Of(grade)} of 3) for {words}.", (double)grade, value.Source);
            }
        }
    }

    // Brassica covers carry clubroot and other diseases to brassica vegetables: no gap is long enough.
    private static CoverCropReason? DiseaseBridge(CoverCrop cover, Crop? lastCrop, Crop? nextCrop) =>
        cover.Family == "Brassicaceae" && new[] { lastCrop, nextCrop }.FirstOrDefault(c => c?.Family == cover.Family) is { } vegetable
            ? new($"A brassica like {vegetable.Name}: it carries brassica diseases from crop to crop.", 0, new Citation("cc08k", null, Evidence.Seen))
            : null;

    private static IEnumerable<CoverCropReason> SameFamily(CoverCrop cover, Crop? lastCrop, Crop? nextCrop)
    {
        if (lastCrop?.Family == cover.Family)
        {
            yield return new($"Same plant family ({cover.Family}) as {lastCrop.Name} before it: pests and diseases can carry over.", -2, Citation.CommonPractice);
        }

        if (nextCrop?.Family == cover.Family)
        {
            yield return new($"Same plant family ({cover.Family}) as {nextCrop.Name} after it: pests and diseases can carry over.", -2, Citation.CommonPractice);
        }
    }

    private static IEnumerable<CoverCropReason> Printed(CoverCrop cover)
    {
        foreach (var value in cover.Values)
        {
            if (value.Text is { } text && value.Property is "caution" or "frost" or "termination" or "window")
            {
                var (heading, points) = value.Property switch
                {
                    "caution" => ("Watch", Reseeds(text) ? -1 : 0),
                    "frost" => ("Frost", 0),
                    "termination" => ("End it", 0),
                    _ => ("Sowing time printed for its region", 0),
                };
                yield return new($"{heading}: {text}.", points, value.Source);
            }
        }
    }

    private static bool Reseeds(string caution) =>
        !caution.Contains("does not reseed", StringComparison.Ordinal)
        && (caution.Contains("reseed", StringComparison.Ordinal) || caution.Contains("volunteer", StringComparison.Ordinal) || caution.Contains("hard seed", StringComparison.Ordinal) || caution.Contains("weedy", StringComparison.Ordinal));

    // The high end: a thin stand on a small bed costs more than a handful of seed.
    private static Mass? SeedFor(CoverCropValue? seed, Area? area) =>
        area is { } ground && seed is { Unit: "lb/acre" } && (seed.High ?? seed.Value ?? seed.Low) is { } rate
            ? MassPerArea.FromPoundsPerAcre((double)rate).On(ground)
            : null;
}
