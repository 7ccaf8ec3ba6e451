using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>Trying a spreader, or a hand, on a strip: what it should put down there, what it did, and what to change.</summary>
public static class StripFormulas
{
    /// <summary>What the strip should get: m = R × L × W / 43560.</summary>
    public static Formula<(MassPerArea Rate, Length Length, Length Swath), Mass> TargetOnStrip { get; } = new(
        "strip-target-weight",
        "Weight that the strip should get",
        "m = R × L × W / 43560",
        Citation.UnitDefinitions,
        [
            new(new Symbol("R", "rate wanted", "lb/acre", 0), x => x.Rate.PoundsPerAcre),
            new(new Symbol("L", "length of the strip", "ft", 0.1), x => x.Length.Feet),
            new(new Symbol("W", "width that one pass covers", "ft", 0.1), x => x.Swath.Feet),
        ],
        new(new Symbol("m", "weight for the strip", "lb"), y => y.Pounds),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), Length.FromFeet(v[1]), Length.FromFeet(v[2])),
        x => x.Rate.On(x.Length * x.Swath));

    /// <summary>The rate that a caught weight means: R = m × 43560 / (L × W).</summary>
    public static Formula<(Mass Caught, Length Length, Length Swath), MassPerArea> RateOfStrip { get; } = new(
        "strip-rate",
        "Rate that the weight on the strip means",
        "R = m × 43560 / (L × W)",
        Citation.UnitDefinitions,
        [
            new(new Symbol("m", "weight caught on the strip", "lb", 0), x => x.Caught.Pounds),
            new(new Symbol("L", "length of the strip", "ft", 0.1), x => x.Length.Feet),
            new(new Symbol("W", "width that one pass covers", "ft", 0.1), x => x.Swath.Feet),
        ],
        new(new Symbol("R", "rate put down", "lb/acre"), y => y.PoundsPerAcre),
        v => (Mass.FromPounds(v[0]), Length.FromFeet(v[1]), Length.FromFeet(v[2])),
        x => MassPerArea.Of(x.Caught, x.Length * x.Swath));

    /// <summary>How much more, or less, to let out: c = R / r. Only a start: try the strip again.</summary>
    public static Formula<(MassPerArea Wanted, MassPerArea PutDown), Coefficient> Correction { get; } = new(
        "strip-correction",
        "What to multiply the flow by after a strip",
        "c = R / r",
        Citation.OurArithmetic,
        [
            new(new Symbol("R", "rate wanted", "lb/acre", 0), x => x.Wanted.PoundsPerAcre),
            new(new Symbol("r", "rate put down on the strip", "lb/acre", 0.001), x => x.PutDown.PoundsPerAcre),
        ],
        new(new Symbol("c", "multiply the flow, or divide the pace, by this", ""), y => y.Value),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassPerArea.FromPoundsPerAcre(v[1])),
        x => new Coefficient(x.Wanted.PoundsPerAcre / x.PutDown.PoundsPerAcre),
        "A ratio; the publications that were read say to open or close the setting and try again, without a number.");
}
