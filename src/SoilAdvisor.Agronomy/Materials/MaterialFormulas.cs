using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>From the analysis of a material to what it supplies, and back from a need to a rate.</summary>
public static class MaterialFormulas
{
    private static readonly Citation Regional = new("mu-regional", null, Evidence.Seen);

    /// <summary>Plant-available nitrogen of manure from its three forms of nitrogen: organic, ammonium, nitrate.</summary>
    public static Formula<(MassShare Total, MassShare Ammonium, MassShare Nitrate, ShareOf<OrganicN> Mineralised, ShareOf<AmmoniumN> Retained), MassShare> PlantAvailableNitrogenSplit { get; } = new(
        "plant-available-nitrogen-split",
        "Plant-available nitrogen of manure, by form",
        "PAN = (N − A − O) × m + A × r + O",
        Regional,
        [
            new(new Symbol("N", "total nitrogen", "lb/ton", 0), x => x.Total.PoundsPerShortTon),
            new(new Symbol("A", "ammonium nitrogen", "lb/ton", 0), x => x.Ammonium.PoundsPerShortTon),
            new(new Symbol("O", "nitrate nitrogen", "lb/ton", 0), x => x.Nitrate.PoundsPerShortTon),
            new(new Symbol("m", "part of the organic nitrogen released in the first year", "", 0, 1), x => x.Mineralised.Fraction),
            new(new Symbol("r", "part of the ammonium kept after spreading", "", 0, 1), x => x.Retained.Fraction),
        ],
        new(new Symbol("PAN", "plant-available nitrogen, first year", "lb/ton"), y => y.PoundsPerShortTon),
        v => (MassShare.FromPoundsPerShortTon(v[0]), MassShare.FromPoundsPerShortTon(v[1]), MassShare.FromPoundsPerShortTon(v[2]), ShareOf<OrganicN>.FromFraction(v[3]), ShareOf<AmmoniumN>.FromFraction(v[4])),
        x => MassShare.FromFraction(((x.Total.Fraction - x.Ammonium.Fraction - x.Nitrate.Fraction) * x.Mineralised.Fraction) + (x.Ammonium.Fraction * x.Retained.Fraction) + x.Nitrate.Fraction));

    /// <summary>Plant-available nitrogen where only the total is known. Its factor is of total nitrogen, never of organic nitrogen.</summary>
    public static Formula<(MassShare Total, ShareOf<TotalN> Available), MassShare> PlantAvailableNitrogenOfTotal { get; } = new(
        "plant-available-nitrogen-of-total",
        "Plant-available nitrogen, from the total",
        "PAN = N × f",
        Regional,
        [
            new(new Symbol("N", "total nitrogen", "lb/ton", 0), x => x.Total.PoundsPerShortTon),
            new(new Symbol("f", "part of total nitrogen available in the season", "", -1, 1), x => x.Available.Fraction),
        ],
        new(new Symbol("PAN", "plant-available nitrogen", "lb/ton"), y => y.PoundsPerShortTon),
        v => (MassShare.FromPoundsPerShortTon(v[0]), ShareOf<TotalN>.FromFraction(v[1])),
        x => MassShare.FromFraction(x.Total.Fraction * x.Available.Fraction),
        "The publication prints the form; no worked example of it was read.");

    /// <summary>Rate of a material that supplies a wanted amount of one nutrient.</summary>
    public static Formula<(MassPerArea Wanted, MassShare Content), MassPerArea> MaterialForNutrient { get; } = new(
        "material-for-nutrient",
        "Material that supplies a nutrient",
        "M = N × 100 / p",
        new Citation("osu-577", null, Evidence.Seen),
        [
            new(new Symbol("N", "nutrient wanted", "lb/acre", 0), x => x.Wanted.PoundsPerAcre),
            new(new Symbol("p", "content of the material that counts", "%", 0.001, 100), x => x.Content.Percent),
        ],
        new(new Symbol("M", "material", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1])),
        x => x.Wanted * (1 / x.Content.Fraction));

    /// <summary>What a rate of a material supplies of one nutrient.</summary>
    public static Formula<(MassPerArea Material, MassShare Content), MassPerArea> NutrientFromMaterial { get; } = new(
        "nutrient-from-material",
        "Nutrient that a material supplies",
        "N = M × p / 100",
        new Citation("uky-manures", null, Evidence.Seen),
        [
            new(new Symbol("M", "material", "lb/acre", 0), x => x.Material.PoundsPerAcre),
            new(new Symbol("p", "content of the material that counts", "%"), x => x.Content.Percent),
        ],
        new(new Symbol("N", "nutrient", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1])),
        x => x.Content.In(x.Material));

    /// <summary>Boron product that carries a boron rate. Weigh it: never a spoon.</summary>
    public static Formula<(MassPerArea Boron, MassShare Content), MassPerArea> BoronProduct { get; } = new(
        "boron-product",
        "Boron product for a boron rate",
        "M = B × 100 / p",
        new Citation("msu-boron", null, Evidence.Seen),
        [
            new(new Symbol("B", "boron (element) wanted", "lb/acre", 0, 4), x => x.Boron.PoundsPerAcre),
            new(new Symbol("p", "boron in the product", "%", 1, 25), x => x.Content.Percent),
        ],
        new(new Symbol("M", "product", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1])),
        x => x.Boron * (1 / x.Content.Fraction));

    /// <summary>Content of the material as it is spread, from its content in dry matter.</summary>
    public static Formula<(MassShare Dry, MassShare Moisture), MassShare> DryToAsIs { get; } = new(
        "dry-to-as-is",
        "Content as spread, from content in dry matter",
        "a = d × (100 − w) / 100",
        Citation.OurArithmetic,
        [
            new(new Symbol("d", "content in dry matter", "%"), x => x.Dry.Percent),
            new(new Symbol("w", "moisture of the material as it is", "%", 0, 100), x => x.Moisture.Percent),
        ],
        new(new Symbol("a", "content as spread", "%"), y => y.Percent),
        v => (MassShare.FromPercent(v[0]), MassShare.FromPercent(v[1])),
        x => MassShare.FromFraction(x.Dry.Fraction * (1 - x.Moisture.Fraction)));
}
