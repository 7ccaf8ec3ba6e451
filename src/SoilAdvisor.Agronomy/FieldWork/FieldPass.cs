using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>One material carried to its beds in one go.</summary>
/// <param name="Order">Place in the order of the work, from 1.</param>
/// <param name="By">Last day; null where no planting date is known or it waits for something else.</param>
/// <param name="Material">The material.</param>
/// <param name="Dose">Which dose of lime, in words; null elsewhere.</param>
/// <param name="Rules">Why it stands here and what to keep, in sentences.</param>
/// <param name="Beds">The beds in the order of the plan.</param>
public sealed record FieldPass(int Order, DateOnly? By, Material Material, string? Dose, IReadOnlyList<string> Rules, IReadOnlyList<MeasuredSpread> Beds)
{
    /// <summary>What to carry out, as measured.</summary>
    public Mass Measured => Mass.FromKilograms(Beds.Sum(b => b.Amount.Measured.Kilograms));
}
