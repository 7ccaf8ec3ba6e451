using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning;

/// <summary>What a farm can buy and carry out. Nothing is limited by default, and nothing here is ever assumed.</summary>
/// <param name="ProductsPerBed">Most materials on one bed, at least 1; null for no limit.</param>
/// <param name="Products">Most materials on the whole farm, at least 1; null for no limit.</param>
/// <param name="SmallestRate">Least rate that can be spread evenly; null for none.</param>
/// <param name="LabourPerPass">Cost of carrying one material to one bed once; null for none.</param>
/// <param name="Budget">Most that materials, freight and labour may cost; null for no limit.</param>
/// <param name="Seconds">Longest time for the search of the whole farm, 1 to 60.</param>
public sealed record FarmLimits(
    int? ProductsPerBed = null,
    int? Products = null,
    MassPerArea? SmallestRate = null,
    Money? LabourPerPass = null,
    Money? Budget = null,
    int Seconds = FarmLimits.UsualSeconds)
{
    /// <summary>Time that the search takes at most when nothing else is asked.</summary>
    public const int UsualSeconds = 10;

    /// <summary>Most of single nutrients on every bed; empty for none.</summary>
    public IReadOnlyList<NutrientCeiling> Ceilings { get; init; } = [];

    /// <summary>Money that a pound of a nutrient above what is needed counts as in the choice; null for the usual figure, which is ours.</summary>
    public Money? ExcessPenalty { get; init; }

    /// <summary>No limit of any kind.</summary>
    public static FarmLimits None { get; } = new();

    /// <summary>True when materials or passes are counted, one by one.</summary>
    public bool CountWholes => ProductsPerBed is not null || Products is not null || SmallestRate is not null || LabourPerPass is not null;
}
