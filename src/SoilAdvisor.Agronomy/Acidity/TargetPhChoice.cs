using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Which pH a bed is limed to. Targets of different crops are never averaged.</summary>
public static class TargetPhChoice
{
    private const decimal AcidLovingBelow = 5.8m;
    private const decimal LowestAsked = 4.0m;
    private const decimal HighestAsked = 7.5m;

    /// <summary>
    /// The target asked for; else the highest target of the crops, unless one of them needs acid soil (target below 5.8): then that crop's,
    /// with the conflict named. Refuses an organic soil and crops without a published target.
    /// </summary>
    /// <param name="plantings">Crops of the bed in order.</param>
    /// <param name="test">The soil test: an organic soil is limed to less than a mineral one.</param>
    /// <param name="asked">Target pH of the request, from 4.0 to 7.5; null for none.</param>
    public static Answer<TargetPhAnswer> For(IReadOnlyList<Planting> plantings, SoilTest test, decimal? asked)
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

        if (test.SoilGroup == SoilGroup.Organic)
        {
            return Answer<TargetPhAnswer>.Refused(
                "organic-soil-target",
                "The crop targets held here are for mineral soils; an organic soil (muck, peat) limed to them would lack manganese, zinc and boron.",
                "Give the target pH that your state's guide prints for organic soils (targetPh).");
        }

        var targets = plantings.Select(p => p.Crop).DistinctBy(c => c.Id).Select(Of).OfType<CropTarget>().ToList();
        if (targets.Count == 0)
        {
            return Answer<TargetPhAnswer>.Refused(
                "no-target-ph",
                $"No target pH is held for {string.Join(", ", plantings.Select(p => p.Crop.Name).Distinct())}.",
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
        if (chosen.IsLowEnd)
        {
            assumptions.Add(new Assumption(
                "target-ph-low-end",
                Invariant($"{chosen.Crop.Name}: the published range starts at pH {chosen.Value}; the low end is the target, so that no more lime goes on than the range asks for."),
                chosen.Source));
        }

        if (chosen.Value < highest.Value && highest.Value >= AcidLovingBelow)
        {
            assumptions.Add(new Assumption(
                "target-ph-conflict",
                Invariant($"{lowest.Crop.Name} needs acid soil (pH {lowest.Value}) and {highest.Crop.Name} wants pH {highest.Value}. The bed is limed to {lowest.Value} only; give {highest.Crop.Name} another bed."),
                lowest.Source));
        }
        else if (lowest.Value < chosen.Value)
        {
            assumptions.Add(new Assumption(
                "target-ph-highest",
                Invariant($"The crops want pH {lowest.Value} ({lowest.Crop.Name}) to {highest.Value} ({highest.Crop.Name}); the bed is limed for the most sensitive, pH {highest.Value}."),
                highest.Source));
        }

        return new TargetPhAnswer(new TargetPh(chosen.Value, chosen.Crop.Id, chosen.Crop.ValueOf("lime-below-ph")?.Value, chosen.Source), assumptions);
    }

    private static CropTarget? Of(Crop crop) =>
        crop.ValueOf("target-ph") is { } figure && (figure.Value ?? figure.Low) is { } value ? new CropTarget(crop, value, figure.Value is null, figure.Source) : null;

    private sealed record CropTarget(Crop Crop, decimal Value, bool IsLowEnd, Citation Source);
}
