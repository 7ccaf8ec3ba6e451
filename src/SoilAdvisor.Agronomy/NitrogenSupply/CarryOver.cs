using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>
/// Nitrogen that still comes from manure and compost of earlier seasons. A share of organic nitrogen is taken of organic nitrogen only: where
/// ammonium was not tested, organic nitrogen is at most the total, so the credit runs from nothing up and nothing of it is counted.
/// </summary>
public static class CarryOver
{
    /// <summary>Credits of what was spread in the seasons before.</summary>
    /// <param name="applied">What was spread on the bed.</param>
    /// <param name="planted">First planting of the season, or the day of the plan.</param>
    /// <param name="area">Ground that was spread; above zero.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not said.</param>
    /// <param name="working">Receives the working; null for none.</param>
    public static AppliedCredit For(IReadOnlyList<AppliedMaterial> applied, DateOnly planted, Area area, NitrogenTables tables, string? region, WorkingSheet? working = null)
    {
        var credits = new List<NutrientCredit>();
        var assumptions = new List<Assumption>();
        foreach (var material in applied)
        {
            var year = SeasonOfSpreading.Of(material.Date, planted);
            if (year < 2 || material.Analysis.Nitrogen is not { } content)
            {
                continue;
            }

            Say(assumptions, "season-of-spreading", Invariant($"{material.Material.Name} of {material.Date:yyyy-MM-dd} was spread more than {SeasonOfSpreading.OwnSeasonDays} days before planting: it counts as season {year} after spreading. Its nitrogen is a carry-over and no first-season credit. The limit of {SeasonOfSpreading.OwnSeasonDays} days is ours."), Citation.OurJudgement);
            if (Choose(tables, material, region) is not { } release || release.InYear(year) is not { } share)
            {
                Say(assumptions, "no-carry-over", Invariant($"No publication that is held prints what {material.Material.Name} gives in season {year} after spreading: nothing is counted."), Citation.OurJudgement);
                continue;
            }

            var rate = MassPerArea.Of(material.Amount, area);
            var organic = new Rate<OrganicN>(content.OrganicHigh.In(rate));
            var high = NitrogenFormulas.ReleasedInYear.Of((organic, share), working, Origin.Given("what was spread"), Origin.From(release.Source)).Amount;
            if (content.Organic is null)
            {
                Say(assumptions, "organic-nitrogen-untested", $"Ammonium of {material.Material.Name} was not tested, so its organic nitrogen is not known: the carry-over is shown up to what it would be if all of its nitrogen were organic, and none is counted.", release.Source);
            }

            Say(assumptions, "carry-over-series", Invariant($"The carry-over is read from the series {release.Series}: {share.Percent:0.#} % of the organic nitrogen in season {year}."), release.Source);
            credits.Add(new NutrientCredit(
                PlantNutrient.N,
                Invariant($"{material.Material.Name} of {material.Date:yyyy-MM-dd}, carry-over in season {year}"),
                content.Organic is null ? default : high,
                high,
                "over the season",
                release.Source));
        }

        return new AppliedCredit(credits, assumptions);
    }

    private static OrganicRelease? Choose(NitrogenTables tables, AppliedMaterial material, string? region) =>
        NitrogenFactorChoice.InOrder(tables, material.Material.Id, material.Analysis.DryMatter, region).FirstOrDefault(r => r.Source.Evidence != Evidence.FromMemory);

    private static void Say(List<Assumption> assumptions, string code, string text, Citation source)
    {
        if (!assumptions.Exists(a => a.Text == text))
        {
            assumptions.Add(new Assumption(code, text, source));
        }
    }
}
