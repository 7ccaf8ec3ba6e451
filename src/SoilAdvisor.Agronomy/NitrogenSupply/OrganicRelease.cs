using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>What one publication prints of the organic nitrogen of one class of manure or compost, year by year.</summary>
/// <param name="Series">Id of the publication's series.</param>
/// <param name="Regions">ISO 3166-2 codes it was made for; empty where it is only shown beside others.</param>
/// <param name="MaterialClass">cattle, swine, sheep, horse, poultry, manure, manure-with-bedding, composted-manure, feedlot, poultry-litter or compost.</param>
/// <param name="DryMatterFrom">Lowest dry matter it holds for, %, inclusive; null for none.</param>
/// <param name="DryMatterBelow">Dry matter it no longer holds for, %; null for none.</param>
/// <param name="Years">Share in the first, second and third year; null where not printed.</param>
/// <param name="ThreeYears">Total over three years where only that is printed; null otherwise.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record OrganicRelease(
    string Series,
    IReadOnlyList<string> Regions,
    string MaterialClass,
    decimal? DryMatterFrom,
    decimal? DryMatterBelow,
    IReadOnlyList<ShareOf<OrganicN>?> Years,
    ShareOf<OrganicN>? ThreeYears,
    Citation Source,
    string? Note)
{
    /// <summary>The share in a year; null where none is printed.</summary>
    /// <param name="year">1 is the year of spreading.</param>
    public ShareOf<OrganicN>? InYear(int year) => year >= 1 && year <= Years.Count ? Years[year - 1] : null;

    /// <summary>Whether it holds for a dry matter.</summary>
    /// <param name="dryMatter">Dry matter, %.</param>
    public bool Fits(decimal dryMatter) => !(dryMatter < DryMatterFrom) && !(dryMatter >= DryMatterBelow);
}
