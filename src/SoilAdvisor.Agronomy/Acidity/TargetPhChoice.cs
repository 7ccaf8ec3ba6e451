using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Which pH a bed is limed to. Targets of different crops are never averaged, and a floor is never taken for a target.</summary>
public static class TargetPhChoice
{
    /// <summary>A crop with a target below this wants acid soil. Ours: between the targets of potatoes and of other vegetables.</summary>
    internal const decimal AcidLovingBelow = 5.8m;

    private const decimal LowestAsked = 4.0m;
    private const decimal HighestAsked = 7.5m;

    /// <summary>
    /// The target asked for; else the highest target of the crops, unless one of them needs acid soil (target below 5.8): then that crop's,
    /// with the conflict named. A crop's target is the one published for the farm's region, else the crop's own, else one of no region.
    /// Refuses an organic soil without a target of its own, and crops without a published target.
    /// </summary>
    /// <param name="plantings">Crops of the bed in order.</param>
    /// <param name="test">The soil test: an organic soil is limed to less than a mineral one.</param>
    /// <param name="asked">Target pH of the request, from 4.0 to 7.5; null for none.</param>
    /// <param name="published">Published targets by crop group, soil and region; null for none.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not known.</param>
    public static Answer<TargetPhAnswer> For(IReadOnlyList<Planting> plantings, SoilTest test, decimal? asked, IReadOnlyList<TargetPhRow>? published = null, string? region = null)
    {
        if (asked is { } value)
        {
            return value is >= LowestAsked and <= HighestAsked
                ? Answer<TargetPhAnswer>.Given(new(new TargetPh(value, null, null, new Citation("our-judgement", "target pH named in the request", Evidence.Ours)), []))
                : Answer<TargetPhAnswer>.Refused(
                    "target-ph-out-of-range",
                    Invariant($"A target pH of {value} is outside {LowestAsked} to {HighestAsked}."),
                    "Give the target that your crop's guide prints, for example 6.5.");
        }

        var organic = test.SoilGroup == SoilGroup.Organic;
        var rows = (published ?? []).Where(r => r.Fits(organic)).ToList();
        var crops = plantings.Select(p => p.Crop).DistinctBy(c => c.Id).ToList();
        var targets = crops.Select(c => CropTarget.Of(c, organic, rows, region)).OfType<CropTarget>().ToList();
        if (targets.Count == 0)
        {
            return organic
                ? Answer<TargetPhAnswer>.Refused(
                    "organic-soil-target",
                    "The crop targets held here are for mineral soils; an organic soil (muck, peat) limed to them would lack manganese, zinc and boron.",
                    "Give the target pH that your state's guide prints for organic soils (targetPh).")
                : Answer<TargetPhAnswer>.Refused(
                    "no-target-ph",
                    $"No target pH is held for {string.Join(", ", crops.Select(c => c.Name))}.",
                    "Give the target pH of the bed (targetPh).");
        }

        return Answer<TargetPhAnswer>.Given(Choose(targets));
    }

    private static TargetPhAnswer Choose(List<CropTarget> targets)
    {
        var lowest = targets.MinBy(t => t.Value)!;
        var highest = targets.MaxBy(t => t.Value)!;
        var chosen = lowest.Value < AcidLovingBelow ? lowest : highest;
        var assumptions = new List<Assumption>();
        if (chosen.Row is { } row)
        {
            assumptions.Add(new Assumption(
                "target-ph-region",
                Invariant($"{chosen.Crop.Name}: pH {chosen.Value} is what {row.Region} prints for {row.CropGroup} ({row.SoilClass} soil)."),
                chosen.Source));
        }

        if (chosen.IsLowEnd)
        {
            assumptions.Add(new Assumption(
                "target-ph-low-end",
                Invariant($"{chosen.Crop.Name}: the published range starts at pH {chosen.Value}; the low end is the target, so that no more lime goes on than the range asks for."),
                chosen.Source));
        }

        if (chosen.Floor is { } floor)
        {
            assumptions.Add(new Assumption(
                "target-ph-floor",
                Invariant($"{floor.Region} advises lime for {floor.CropGroup} below pH {chosen.LimeBelow}. That is a floor, not a target; the target {chosen.Value} comes from elsewhere."),
                floor.Source));
        }

        var wants = string.Join(", ", targets.Select(t => Invariant($"{t.Crop.Name} pH {t.Value}")));
        if (chosen.Value < highest.Value && highest.Value >= AcidLovingBelow)
        {
            assumptions.Add(new Assumption(
                "target-ph-conflict",
                Invariant($"These crops do not agree: {wants}. {lowest.Crop.Name} needs acid soil, so the bed is limed to {lowest.Value} only. Give {string.Join(" and ", targets.Where(t => t.Value >= AcidLovingBelow).Select(t => t.Crop.Name))} another bed, or grow {lowest.Crop.Name} first and lime after it."),
                lowest.Source));
        }
        else if (lowest.Value < chosen.Value)
        {
            assumptions.Add(new Assumption(
                "target-ph-highest",
                Invariant($"The crops want: {wants}. The bed is limed for the most sensitive, {highest.Crop.Name}, pH {highest.Value}; nothing is averaged."),
                highest.Source));
        }

        return new TargetPhAnswer(new TargetPh(chosen.Value, chosen.Crop.Id, chosen.LimeBelow, chosen.Source), assumptions);
    }
}
