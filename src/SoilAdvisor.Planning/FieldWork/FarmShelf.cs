using SoilAdvisor.Agronomy.Plans;
using UnitsNet;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>
/// What lies ready beyond the plan, by material: the rest of packs and shelf. Rounding up draws on it, so that all beds together never take
/// more than the farm has.
/// </summary>
internal sealed class FarmShelf
{
    private readonly Dictionary<string, double> left;

    private FarmShelf(Dictionary<string, double> left) => this.left = left;

    /// <summary>The shelf after the purchases of a plan.</summary>
    /// <param name="purchases">What is needed and bought.</param>
    /// <param name="budgeted">True when a budget is set: then nothing beyond the plan is bought loose.</param>
    public static FarmShelf After(IReadOnlyList<Purchase> purchases, bool budgeted) =>
        new(purchases.Where(p => budgeted || p.Packs is not null || p.Offered.OnHand is not null && p.ToBuy.Kilograms == 0)
            .ToDictionary(p => p.Offered.Material.Id, p => Math.Max(0, (p.Offered.OnHand?.Kilograms ?? 0) + p.ToBuy.Kilograms - p.Needed.Kilograms), StringComparer.Ordinal));

    /// <summary>What may be taken beyond the plan; null for any amount.</summary>
    /// <param name="material">Id of the material.</param>
    public Mass? Beyond(string material) => left.TryGetValue(material, out var kilograms) ? Mass.FromKilograms(kilograms) : null;

    /// <summary>Takes what was rounded up, or puts back what was rounded down.</summary>
    /// <param name="material">Id of the material.</param>
    /// <param name="more">Measured less planned.</param>
    public void Take(string material, Mass more)
    {
        if (left.TryGetValue(material, out var kilograms))
        {
            left[material] = kilograms - more.Kilograms;
        }
    }
}
