namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>Everything printed on nitrogen in time, in the order of the files.</summary>
/// <param name="Releases">Organic nitrogen by year.</param>
/// <param name="Ammonium">Ammonium kept.</param>
/// <param name="SeasonShares">Shares over a season.</param>
/// <param name="Points">Release with time.</param>
/// <param name="CarbonRatios">Thresholds and classes by carbon to nitrogen.</param>
/// <param name="Uptake">When crops take nitrogen up.</param>
/// <param name="Classes">Classes of materials.</param>
public sealed record NitrogenTables(
    IReadOnlyList<OrganicRelease> Releases,
    IReadOnlyList<AmmoniumKept> Ammonium,
    IReadOnlyList<SeasonShare> SeasonShares,
    IReadOnlyList<ReleasePoint> Points,
    IReadOnlyList<CarbonRatioRule> CarbonRatios,
    IReadOnlyList<UptakeFact> Uptake,
    IReadOnlyList<MaterialNitrogenClass> Classes)
{
    /// <summary>The classes of a material; null where none are held.</summary>
    /// <param name="material">Id of the material.</param>
    public MaterialNitrogenClass? ClassOf(string material) => Classes.FirstOrDefault(c => c.Material == material);
}
