using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>What one publication prints of the nitrogen of a class of materials over one period. Shown beside what the plan counts with.</summary>
/// <param name="SeasonClass">The class, for example quick-release.</param>
/// <param name="Low">Low end, %; null where none is printed or it lies below zero by an amount that is not printed.</param>
/// <param name="High">High end, %.</param>
/// <param name="OfOrganic">True for a share of organic nitrogen, false for one of total nitrogen. The two are never exchanged.</param>
/// <param name="Incubation">True for an incubation in the laboratory, false for field advice.</param>
/// <param name="Days">Length of the period, days; null for a season.</param>
/// <param name="Temperature">Temperature of an incubation, °C; null for none.</param>
/// <param name="Regions">ISO 3166 codes it was made for; empty for none.</param>
/// <param name="Conditions">Printed conditions; null for none.</param>
/// <param name="Source">Where it stands.</param>
public sealed record SeasonShare(
    string SeasonClass,
    decimal? Low,
    decimal High,
    bool OfOrganic,
    bool Incubation,
    int? Days,
    decimal? Temperature,
    IReadOnlyList<string> Regions,
    string? Conditions,
    Citation Source);
