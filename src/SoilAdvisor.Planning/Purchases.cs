using SoilAdvisor.Agronomy.Plans;
using UnitsNet;

namespace SoilAdvisor.Planning;

/// <summary>What the whole farm needs of each material, and what of it has to be bought.</summary>
internal static class Purchases
{
    public static IReadOnlyList<Purchase> Of(IReadOnlyList<BedPlan> beds)
    {
        var needed = beds
            .SelectMany(b => b.Applications.Select(a => (a.Offered, a.PerBed)).Concat(Lime(b)))
            .GroupBy(a => a.Offered.Material.Id, StringComparer.Ordinal);
        return [.. needed.OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => One(g.First().Offered, g.Sum(a => a.PerBed.Kilograms)))];
    }

    private static IEnumerable<(Agronomy.Materials.OfferedMaterial Offered, Mass PerBed)> Lime(BedPlan bed) =>
        bed.Lime?.Chosen is { } chosen ? [(chosen.Offered, chosen.PerBed ?? chosen.Rate.On(bed.Bed.Area))] : [];

    private static Purchase One(Agronomy.Materials.OfferedMaterial offered, double kilograms)
    {
        var needed = Mass.FromKilograms(kilograms);
        Mass? used = offered.OnHand is { } stock ? Mass.FromKilograms(Math.Min(stock.Kilograms, kilograms)) : null;
        var buy = Mass.FromKilograms(kilograms - (used?.Kilograms ?? 0));
        return new Purchase(offered, needed, used, buy, Costs.Of(offered, buy));
    }
}
