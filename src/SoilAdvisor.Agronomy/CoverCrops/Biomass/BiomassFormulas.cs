using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Biomass;

/// <summary>What a stand weighs, from cuts or from its height, and the nitrogen percent of a mixture.</summary>
public static class BiomassFormulas
{
    private const double FirstPounds = 2000;
    private const double PoundsPerInch = 150;
    private const double FirstInchesOfBroadleaf = 6;
    private const double FirstInchesOfGrain = 8;

    /// <summary>Dry weight of a fresh cut. Fresh weight is four to eight times the dry weight: taking one for the other is the usual mistake.</summary>
    public static Formula<(Mass Fresh, MassShare DryMatter), Mass> DryOfFresh { get; } = new(
        "dry-weight-of-fresh",
        "Dry weight of a fresh cut",
        "m = w × d / 100",
        Citation.OurArithmetic,
        [
            new(new Symbol("w", "fresh weight", "g", 0), x => x.Fresh.Grams),
            new(new Symbol("d", "dry matter in the fresh weight", "%", 1, 100), x => x.DryMatter.Percent),
        ],
        new(new Symbol("m", "dry weight", "g"), y => y.Grams),
        v => (Mass.FromGrams(v[0]), MassShare.FromPercent(v[1])),
        x => x.Fresh * x.DryMatter.Fraction,
        "A percentage; no publication that was read works an example.");

    /// <summary>Dry matter of a green broadleaf stand from its height and cover. Height agrees poorly with what is weighed: an estimate of low confidence.</summary>
    public static Formula<(Length Height, MassShare Cover), MassPerArea> OfHeight { get; } = new(
        "dry-matter-of-height",
        "Dry matter of a broadleaf stand from its height (low confidence)",
        "DM = (2000 + 150 × (h − 6)) × c / 100",
        new Citation("cc07", null, Evidence.Seen),
        [
            new(new Symbol("h", "height at the time it is killed", "in", 6, 60), x => x.Height.Inches),
            new(new Symbol("c", "ground that it covers", "%", 0, 100), x => x.Cover.Percent),
        ],
        new(new Symbol("DM", "dry matter", "lb/acre"), y => y.PoundsPerAcre),
        v => (Length.FromInches(v[0]), MassShare.FromPercent(v[1])),
        x => Estimate(x.Height, FirstInchesOfBroadleaf, x.Cover));

    /// <summary>The same for rye and other small grains, which begin at 8 in. The rise above 8 in is recalled.</summary>
    public static Formula<(Length Height, MassShare Cover), MassPerArea> OfGrainHeight { get; } = new(
        "dry-matter-of-grain-height",
        "Dry matter of rye and small grains from their height (low confidence)",
        "DM = (2000 + 150 × (h − 8)) × c / 100",
        new Citation("cc01", null, Evidence.FromMemory),
        [
            new(new Symbol("h", "height at the time it is killed", "in", 8, 72), x => x.Height.Inches),
            new(new Symbol("c", "ground that it covers", "%", 0, 100), x => x.Cover.Percent),
        ],
        new(new Symbol("DM", "dry matter", "lb/acre"), y => y.PoundsPerAcre),
        v => (Length.FromInches(v[0]), MassShare.FromPercent(v[1])),
        x => Estimate(x.Height, FirstInchesOfGrain, x.Cover),
        "Only its first point, 2000 lb/acre at 8 in, was read; the rise above it is recalled.");

    /// <summary>Nitrogen percent of two stands together. More than two are blended one after the other; available nitrogen is read once, from the blend.</summary>
    public static Formula<(MassPerArea First, MassShare FirstNitrogen, MassPerArea Second, MassShare SecondNitrogen), MassShare> BlendedNitrogen { get; } = new(
        "blended-nitrogen",
        "Nitrogen in the dry matter of a mixture",
        "n = (A × a + B × b) / (A + B)",
        Citation.OurArithmetic,
        [
            new(new Symbol("A", "dry matter of the first part", "lb/acre", 0), x => x.First.PoundsPerAcre),
            new(new Symbol("a", "nitrogen in it", "%", 0, 10), x => x.FirstNitrogen.Percent),
            new(new Symbol("B", "dry matter of the second part", "lb/acre", 0), x => x.Second.PoundsPerAcre),
            new(new Symbol("b", "nitrogen in it", "%", 0, 10), x => x.SecondNitrogen.Percent),
        ],
        new(new Symbol("n", "nitrogen in the dry matter of both", "%"), y => y.Percent),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1]), MassPerArea.FromPoundsPerAcre(v[2]), MassShare.FromPercent(v[3])),
        x => MassShare.FromFraction((x.FirstNitrogen.In(x.First) + x.SecondNitrogen.In(x.Second)).PoundsPerAcre / (x.First + x.Second).PoundsPerAcre),
        "A weighted mean; no publication that was read works an example.");

    private static MassPerArea Estimate(Length height, double firstInches, MassShare cover) =>
        MassPerArea.FromPoundsPerAcre((FirstPounds + (PoundsPerInch * (height.Inches - firstInches))) * cover.Fraction);
}
