using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops.Seed;

/// <summary>From a seed tag and a rate to the seed that is weighed out.</summary>
public static class SeedFormulas
{
    /// <summary>The part of a bag that is pure and alive.</summary>
    public static Formula<(MassShare Purity, MassShare Germination, MassShare HardSeed), MassShare> PureLiveSeed { get; } = new(
        "pure-live-seed",
        "Pure live seed of a bag",
        "P = p × (g + h) / 100",
        new Citation("cc61", null, Evidence.Seen),
        [
            new(new Symbol("p", "purity", "%", 0, 100), x => x.Purity.Percent),
            new(new Symbol("g", "germination", "%", 0, 100), x => x.Germination.Percent),
            new(new Symbol("h", "hard or dormant seed; 0 where the crop must not wait for it", "%", 0, 100), x => x.HardSeed.Percent),
        ],
        new(new Symbol("P", "pure live seed", "%"), y => y.Percent),
        v => (MassShare.FromPercent(v[0]), MassShare.FromPercent(v[1]), MassShare.FromPercent(v[2])),
        x => MassShare.FromPercent(x.Purity.Percent * (x.Germination.Percent + x.HardSeed.Percent) / 100));

    /// <summary>Seed from the bag that carries a rate of pure live seed.</summary>
    public static Formula<(MassPerArea PureLive, MassShare Share), MassPerArea> SeedToSow { get; } = new(
        "seed-for-pure-live-seed",
        "Seed to sow for a rate of pure live seed",
        "S = R × 100 / P",
        new Citation("cc61", null, Evidence.Seen),
        [
            new(new Symbol("R", "rate of pure live seed", "lb/acre", 0), x => x.PureLive.PoundsPerAcre),
            new(new Symbol("P", "pure live seed", "%", 0.1, 100), x => x.Share.Percent),
        ],
        new(new Symbol("S", "seed from the bag", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1])),
        x => x.PureLive * (1 / x.Share.Fraction));

    /// <summary>Seeds on a square foot from a rate: an acre is 43,560 square feet.</summary>
    public static Formula<(MassPerArea Rate, SeedCount Count), SeedsPerArea> SeedsPerSquareFoot { get; } = new(
        "seeds-per-square-foot",
        "Seeds on a square foot",
        "s = R × n / 43560",
        Citation.UnitDefinitions,
        [
            new(new Symbol("R", "rate of pure live seed", "lb/acre", 0), x => x.Rate.PoundsPerAcre),
            new(new Symbol("n", "seeds in a pound", "seeds/lb", 1), x => x.Count.PerPound),
        ],
        new(new Symbol("s", "seeds", "seeds/sq ft"), y => y.PerSquareFoot),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), SeedCount.FromPerPound(v[1])),
        x => SeedsPerArea.FromPerSquareFoot(x.Rate.PoundsPerAcre * x.Count.PerPound / 43560),
        "Exact unit arithmetic; no publication that was read works an example.");

    /// <summary>The rate that puts so many seeds on a square foot.</summary>
    public static Formula<(SeedsPerArea Seeds, SeedCount Count), MassPerArea> RateOfSeeds { get; } = new(
        "rate-of-seeds-per-square-foot",
        "Rate for so many seeds on a square foot",
        "R = s × 43560 / n",
        Citation.UnitDefinitions,
        [
            new(new Symbol("s", "live seeds", "seeds/sq ft", 0), x => x.Seeds.PerSquareFoot),
            new(new Symbol("n", "seeds in a pound", "seeds/lb", 1), x => x.Count.PerPound),
        ],
        new(new Symbol("R", "rate of pure live seed", "lb/acre"), y => y.PoundsPerAcre),
        v => (SeedsPerArea.FromPerSquareFoot(v[0]), SeedCount.FromPerPound(v[1])),
        x => MassPerArea.FromPoundsPerAcre(x.Seeds.PerSquareFoot * 43560 / x.Count.PerPound),
        "Exact unit arithmetic; no publication that was read works an example.");

    /// <summary>Rate of one species in a mixture: its share of the rate that it would have alone.</summary>
    public static Formula<(MassPerArea Full, MassShare Share), MassPerArea> RateByShare { get; } = new(
        "mixture-rate-by-share",
        "Rate of a species in a mixture",
        "R = F × s / 100",
        new Citation("cc11", "mixtures", Evidence.Seen),
        [
            new(new Symbol("F", "full rate of the species alone", "lb/acre", 0), x => x.Full.PoundsPerAcre),
            new(new Symbol("s", "its share of the full rate", "%", 0, 150), x => x.Share.Percent),
        ],
        new(new Symbol("R", "rate in the mixture", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1])),
        x => x.Share.In(x.Full),
        "The garden rule that was read (about 60 % of the full rate of each of two species) prints no worked example.");

    /// <summary>Rate for another way of sowing than the drill.</summary>
    public static Formula<(MassPerArea Drilled, Coefficient Factor), MassPerArea> ForWayOfSowing { get; } = new(
        "seed-rate-for-way-of-sowing",
        "Rate for broadcast seed",
        "B = D × f",
        new Citation("cc14", "table 1, first rows", Evidence.Seen),
        [
            new(new Symbol("D", "drilled rate", "lb/acre", 0), x => x.Drilled.PoundsPerAcre),
            new(new Symbol("f", "factor of the way of sowing", "", 1, 2), x => x.Factor.Value),
        ],
        new(new Symbol("B", "rate for that way of sowing", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), new Coefficient(v[1])),
        x => x.Drilled * x.Factor.Value);
}
