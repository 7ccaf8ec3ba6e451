namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>What the grower asks of a season of cover crops.</summary>
/// <param name="MostSpecies">Most species on the farm; null for no limit.</param>
/// <param name="PointsPerSpecies">Points that each species after the first costs; not below zero.</param>
/// <param name="FamilyGapMonths">Months that must lie between a cover crop and any crop of its family on the same bed; null for none.</param>
/// <param name="OnlySeedOnHand">True when no seed may be bought.</param>
/// <param name="Seed">Seed by species; a species that is not listed can be bought, without price, in any amount.</param>
public sealed record SeasonWish(int? MostSpecies, decimal PointsPerSpecies, int? FamilyGapMonths, bool OnlySeedOnHand, IReadOnlyList<SeedStock> Seed)
{
    /// <summary>Points that each further species costs where the grower does not say. Ours.</summary>
    public const decimal UsualPointsPerSpecies = 1;

    /// <summary>The stock of a species; nothing on hand and free to buy when it is not listed.</summary>
    /// <param name="species">Id of the species.</param>
    public SeedStock Of(string species)
    {
        var listed = Seed.FirstOrDefault(s => s.CoverCrop == species) ?? new SeedStock(species, UnitsNet.Mass.Zero, true, null, null);
        return OnlySeedOnHand ? listed with { CanBuy = false } : listed;
    }
}
