using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>From a cut frame of cover crop to the nitrogen that the next crop can use.</summary>
public static class CoverCropFormulas
{
    private const double Slope = 17.5;
    private const double Zero = 1.5;
    private const double Cap = 40;
    private const double PercentCarbon = 40;

    // Where residue stops to release nitrogen and where it begins to tie it up, carbon to nitrogen by weight (cc22, cc24, cc20c).
    private const double ReleasesBelow = 24;
    private const double TiesUpAbove = 30;

    /// <summary>Dry matter of a stand from all dried cuts together and the whole area that they were cut from, never from one frame of several.</summary>
    public static Formula<(Mass Dried, Area Frame), MassPerArea> QuadratDryMatter { get; } = new(
        "quadrat-dry-matter",
        "Dry matter of the stand",
        "DM = m / A × 43560 / 453.59237",
        Citation.UnitDefinitions,
        [
            new(new Symbol("m", "dried mass of all cuts", "g", 0), x => x.Dried.Grams),
            new(new Symbol("A", "area of all frames together", "sq ft", 0.01), x => x.Frame.SquareFeet),
        ],
        new(new Symbol("DM", "dry matter", "lb/acre"), y => y.PoundsPerAcre),
        v => (Mass.FromGrams(v[0]), Area.FromSquareFeet(v[1])),
        x => MassPerArea.Of(x.Dried, x.Frame));

    /// <summary>
    /// Nitrogen that a killed cover crop releases to the next crop, per ton of dry matter: the line through the two published points,
    /// nothing at 1.5 % N and 35 lb at 3.5 % N, held at 40 lb. Below 1.5 % it is below zero: the crop ties nitrogen up, by how much is uncertain.
    /// </summary>
    public static Formula<MassShare, MassShare> PlantAvailableNitrogen { get; } = new(
        "cover-crop-plant-available-nitrogen",
        "Plant-available nitrogen of a killed cover crop",
        "PAN = min(17.5 × (n − 1.5), 40)",
        new Citation("cc02", "highlights: 1.5 % and 3.5 % N", Evidence.Seen),
        [new(new Symbol("n", "nitrogen in the dry matter", "%", 0.3, 7), x => x.Percent)],
        new(new Symbol("PAN", "plant-available nitrogen", "lb/ton dry matter"), y => y.PoundsPerShortTon),
        v => MassShare.FromPercent(v[0]),
        x => MassShare.FromPoundsPerShortTon(Math.Min(Slope * (x.Percent - Zero), Cap)));

    /// <summary>Nitrogen credit of a stand.</summary>
    public static Formula<(MassPerArea DryMatter, MassShare Available), Rate<AvailableN>> NitrogenCredit { get; } = new(
        "cover-crop-nitrogen-credit",
        "Nitrogen credit of the stand",
        "N = DM / 2000 × PAN",
        Citation.OurArithmetic,
        [
            new(new Symbol("DM", "dry matter", "lb/acre", 0), x => x.DryMatter.PoundsPerAcre),
            new(new Symbol("PAN", "plant-available nitrogen", "lb/ton dry matter"), x => x.Available.PoundsPerShortTon),
        ],
        new(new Symbol("N", "nitrogen credit", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPoundsPerShortTon(v[1])),
        x => new Rate<AvailableN>(x.Available.In(x.DryMatter)),
        "The highlights that were read print no worked example for a stand.");

    /// <summary>Nitrogen in the dry matter from its carbon to nitrogen ratio, with 40 % carbon.</summary>
    public static Formula<Coefficient, MassShare> NitrogenFromCarbon { get; } = new(
        "cover-crop-nitrogen-from-carbon",
        "Nitrogen in dry matter of a known carbon to nitrogen ratio",
        "n = 40 / CN",
        new Citation("cc23", "table", Evidence.Seen),
        [new(new Symbol("CN", "carbon to nitrogen by weight", "", 4, 400), x => x.Value)],
        new(new Symbol("n", "nitrogen in the dry matter", "%"), y => y.Percent),
        v => new Coefficient(v[0]),
        x => MassShare.FromPercent(PercentCarbon / x.Value));

    /// <summary>
    /// Nitrogen of a stand of known dry matter and %N. The %N of a mixture is that of the whole, blended by dry matter, never the mean of its parts'
    /// available nitrogen. The result may be below zero; it is not held at zero and not at the limits that are printed for estimates.
    /// </summary>
    /// <param name="dryMatter">Dry matter above ground.</param>
    /// <param name="nitrogen">Nitrogen in it; above zero.</param>
    public static StandNitrogen Stand(MassPerArea dryMatter, MassShare nitrogen)
    {
        var available = NitrogenCredit.Of((dryMatter, PlantAvailableNitrogen.Of(nitrogen))).Amount;
        var ratio = PercentCarbon / nitrogen.Percent;
        return new StandNitrogen(nitrogen.In(dryMatter), available, new Coefficient(ratio), ReleaseOf(new Coefficient(ratio)));
    }

    /// <summary>What a carbon to nitrogen ratio means: releases, neutral or ties-up.</summary>
    /// <param name="carbonToNitrogen">Carbon to nitrogen by weight.</param>
    public static string ReleaseOf(Coefficient carbonToNitrogen) => carbonToNitrogen.Value switch
    {
        < ReleasesBelow => "releases",
        <= TiesUpAbove => "neutral",
        _ => "ties-up",
    };
}
