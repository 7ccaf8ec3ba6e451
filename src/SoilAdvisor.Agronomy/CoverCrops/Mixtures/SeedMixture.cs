using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Mixtures;

/// <summary>Seed of one species or a mixture, weighed out.</summary>
/// <param name="Species">The species in the order given.</param>
/// <param name="TotalShare">Sum of the shares of full rates; null when one is not known.</param>
/// <param name="Seed">All seed from the bags.</param>
/// <param name="ForBed">All seed for the bed; null without a bed.</param>
/// <param name="Cost">Cost of all of it; null unless every species has a price in one currency.</param>
/// <param name="Inoculants">Inoculant groups of the legumes, each with the species that share it.</param>
/// <param name="Warnings">Where the partners do not fit, with the figures.</param>
/// <param name="Assumptions">What was taken as true.</param>
public sealed record SeedMixture(
    IReadOnlyList<SownSpecies> Species,
    MassShare? TotalShare,
    MassPerArea Seed,
    Mass? ForBed,
    Money? Cost,
    IReadOnlyList<(Cited<string> Group, IReadOnlyList<CoverCrop> Legumes)> Inoculants,
    IReadOnlyList<Cited<string>> Warnings,
    IReadOnlyList<Assumption> Assumptions);
