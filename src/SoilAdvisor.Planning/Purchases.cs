using SoilAdvisor.Agronomy.Plans;
using UnitsNet;

namespace SoilAdvisor.Planning;

/// <summary>What the whole farm needs of each material, and what of it has to be bought.</summary>
internal static class Purchases
{
    // A thousandth of a pack too little is rounding, not a reason to buy another.
    private const double PackRounding = 1e-3;

    // The solver keeps to the shelf to about one part in a million: nobody buys that.
    private const double SolverRounding = 1e-5;

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
        var left = kilograms - (used?.Kilograms ?? 0);
        left = left <= kilograms * SolverRounding ? 0 : left;
        int? packs = offered.Pack is { } pack ? (int)Math.Ceiling((left / pack.Kilograms) - PackRounding) : null;
        var buy = packs is { } count ? offered.Pack!.Value * count : Mass.FromKilograms(left);
        return new Purchase(offered, needed, used, buy, packs, Costs.Of(offered, buy), buy.Kilograms > 0 ? offered.Freight : null);
    }
}
