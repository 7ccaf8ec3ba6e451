using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops.Seed;

/// <summary>What a species gets when it is sown alone, for one way of sowing.</summary>
/// <param name="Low">Low end of the published rate.</param>
/// <param name="High">High end; the seed is reckoned from it, because a thin stand on a bed costs more than a handful of seed.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Assumption">How it was come by where the publication prints no rate for this way of sowing; null otherwise.</param>
public sealed record FullRate(MassPerArea Low, MassPerArea High, Citation Source, Assumption? Assumption)
{
    /// <summary>The published rate of a species, or why none is held. A rate printed for broadcasting goes before the drilled rate times a factor.</summary>
    /// <param name="cover">The species.</param>
    /// <param name="way">How it is sown.</param>
    /// <param name="rules">Rules of sowing.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    public static Answer<FullRate> Of(CoverCrop cover, WayOfSowing way, CoverCropRules rules, WorkingSheet? working = null)
    {
        var (drilled, broadcast) = (cover.ValueOf("drilled-rate"), cover.ValueOf("broadcast-rate"));
        return way switch
        {
            WayOfSowing.Drilled when Range(drilled) is var (low, high) => Given(low, high, drilled!.Source),
            WayOfSowing.Broadcast when Range(broadcast) is var (low, high) => Given(low, high, broadcast!.Source),
            WayOfSowing.Broadcast when Range(drilled) is var (low, high) => ByFactor(low, high, drilled!, CoverCropRules.BroadcastWorkedIn, "broadcast and worked in", cover, rules, working),
            WayOfSowing.Surface when Range(drilled) is var (low, high) => ByFactor(low, high, drilled!, CoverCropRules.OnTheSurface, "left on the surface", cover, rules, working),
            _ => None(cover, way),
        };
    }

    private static Answer<FullRate> ByFactor(MassPerArea low, MassPerArea high, CoverCropValue drilled, string rule, string how, CoverCrop cover, CoverCropRules rules, WorkingSheet? working)
    {
        if (rules.Of(rule) is not { Value: { } factor } found)
        {
            return Answer<FullRate>.Refused("no-seeding-factor", $"The tables hold no factor from drilled seed to seed {how}.", "Sow with a drill, or give fullRate for your way of sowing.");
        }

        var by = new Coefficient((double)factor);
        return Answer<FullRate>.Given(new FullRate(
            low * by.Value,
            SeedFormulas.ForWayOfSowing.Of((high, by), working, Origin.From(drilled.Source), Origin.From(found.Source)),
            drilled.Source,
            new Assumption("seed-rate-by-factor", FormattableString.Invariant($"No rate is held for {cover.Name} {how}: its drilled rate times {factor} is taken. Other publications print larger factors, up to 2."), found.Source)));
    }

    private static Answer<FullRate> None(CoverCrop cover, WayOfSowing way) => Answer<FullRate>.Refused(
        "no-seed-rate",
        $"No {(way == WayOfSowing.Broadcast ? "broadcast or drilled" : "drilled")} rate of {cover.Name} is held.",
        "Give fullRate in lb/acre from your seed house, or another way of sowing.");

    private static Answer<FullRate> Given(MassPerArea low, MassPerArea high, Citation source) => Answer<FullRate>.Given(new FullRate(low, high, source, null));

    private static (MassPerArea Low, MassPerArea High)? Range(CoverCropValue? value) =>
        value is { Unit: "lb/acre" } && value.Least is { } low && value.Most is { } high
            ? (MassPerArea.FromPoundsPerAcre((double)low), MassPerArea.FromPoundsPerAcre((double)high))
            : null;
}
