using System.Globalization;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.Beds;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>
/// The order of the work. What has the earliest last day goes first; on one day lime goes first and by itself, then ash, fresh manure,
/// compost, and the rest. Common practice.
/// </summary>
internal static class PassOrder
{
    /// <summary>The passes in order; each carries one material to all beds that get it by the same day.</summary>
    /// <param name="carried">What every bed gets, in the order of the plan.</param>
    public static IReadOnlyList<FieldPass> Of(IReadOnlyList<CarriedMaterial> carried)
    {
        var groups = carried
            .GroupBy(c => (c.By, c.Offered.Material.Id, c.Dose, c.DoseWords))
            .OrderBy(g => (g.Key.Dose ?? 0) > 0)
            .ThenBy(g => g.Key.By ?? DateOnly.MaxValue)
            .ThenBy(g => Rank(g.First().Offered))
            .ThenBy(g => g.Key.Dose)
            .ToList();
        return
        [
            .. groups.Select((g, i) => new FieldPass(
                i + 1,
                g.Key.By,
                g.First().Offered.Material,
                g.Key.DoseWords,
                Rules(g.First().Offered, g.Key.Dose, g.Key.By is not null, i > 0 ? groups[i - 1].First().Offered.Material : null),
                [.. g.Select(c => c.Spread)])),
        ];
    }

    /// <summary>True for what neutralises acid and is no ash.</summary>
    public static bool IsLime(OfferedMaterial offered) => offered.Material.Category == "lime" && !IsAsh(offered);

    /// <summary>True for ash: among the liming materials only ash carries potash.</summary>
    public static bool IsAsh(OfferedMaterial offered) => offered.Material.Category == "lime" && offered.Analysis.Share(Nutrient.K2O) > 0;

    private static int Rank(OfferedMaterial offered) => offered switch
    {
        _ when IsLime(offered) => 0,
        _ when IsAsh(offered) => 1,
        { Material.Manure: ManureKind.Raw } => 2,
        { Material.Category: "compost" } => 3,
        _ => 4,
    };

    private static List<string> Rules(OfferedMaterial offered, int? dose, bool dated, Material? before)
    {
        var rules = new List<string>();
        if (IsLime(offered))
        {
            rules.Add(dose > 0 ? "By itself, never on top of the dose before." : "First and by itself: never in one pass with manure, ash, sulfur or rock phosphate.");
        }
        else if (IsAsh(offered))
        {
            rules.Add("By itself: never in one pass with lime, manure, sulfur or rock phosphate.");
        }
        else if (offered.Material.Manure == ManureKind.Raw)
        {
            rules.Add("By itself, never on one day with lime or ash. Work it in the same day.");
        }

        // A last day has the wait in it already.
        if (!dated && offered.WaitBeforeSowingDays > 0 && !(dose > 0))
        {
            rules.Add(string.Create(CultureInfo.InvariantCulture, $"At least {offered.WaitBeforeSowingDays} days before sowing."));
        }

        if (before is not null && NeverTogether.Hold(offered.Material, before))
        {
            rules.Add($"Empty and sweep the spreader first: nothing of {before.Name} may meet it.");
        }

        return rules;
    }
}
