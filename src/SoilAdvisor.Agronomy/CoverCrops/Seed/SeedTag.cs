using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops.Seed;

/// <summary>What the tag on a bag of seed says, by mass and by count as seed laws have it printed.</summary>
public sealed record SeedTag
{
    private SeedTag(MassShare purity, MassShare germination, MassShare hardSeed) => (Purity, Germination, HardSeed) = (purity, germination, hardSeed);

    /// <summary>Pure seed, percent of the bag.</summary>
    public MassShare Purity { get; }

    /// <summary>Germination, percent of pure seed.</summary>
    public MassShare Germination { get; }

    /// <summary>Hard or dormant seed, percent of pure seed: alive, but it comes up late.</summary>
    public MassShare HardSeed { get; }

    /// <summary>A tag, or why it cannot be one: purity and germination above 0 and at most 100 %, germination and hard seed together at most 100 %.</summary>
    /// <param name="purityPercent">Purity, %.</param>
    /// <param name="germinationPercent">Germination, %.</param>
    /// <param name="hardSeedPercent">Hard or dormant seed, %; 0 for none, or where it is not to count.</param>
    public static Answer<SeedTag> Of(decimal purityPercent, decimal germinationPercent, decimal hardSeedPercent)
    {
        if (purityPercent is <= 0 or > 100 || germinationPercent is <= 0 or > 100 || hardSeedPercent is < 0 or > 100)
        {
            return Answer<SeedTag>.Refused("seed-tag-percent", FormattableString.Invariant($"Purity {purityPercent} %, germination {germinationPercent} %, hard seed {hardSeedPercent} %: each lies above 0 (hard seed: from 0) and at most 100 %."), "Copy the percentages from the seed tag.");
        }

        return germinationPercent + hardSeedPercent > 100
            ? Answer<SeedTag>.Refused("seed-tag-over-100", FormattableString.Invariant($"Germination {germinationPercent} % and hard seed {hardSeedPercent} % make more than 100 %."), "Some tags print the total of both: then give germination without the hard seed.")
            : Answer<SeedTag>.Given(new SeedTag(MassShare.FromPercent((double)purityPercent), MassShare.FromPercent((double)germinationPercent), MassShare.FromPercent((double)hardSeedPercent)));
    }
}
