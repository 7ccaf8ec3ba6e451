using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>Subtracts first what was spread since the sample: the test cannot show it yet.</summary>
public static class AppliedCredits
{
    /// <summary>
    /// Credits of the materials spread on or after the day of sampling; earlier ones stand in the test already. Without a day of sampling
    /// all of them count, and that is said.
    /// </summary>
    /// <param name="test">The soil test.</param>
    /// <param name="applied">What was spread on the bed.</param>
    /// <param name="area">Ground that was spread; above zero.</param>
    /// <param name="planted">
    /// First planting of the season: nitrogen of what was spread for it counts whatever the day of sampling, because no soil test of phosphorus
    /// and potassium shows it, and nitrogen of earlier seasons is a carry-over and not counted here. Null judges nitrogen like the others.
    /// </param>
    /// <param name="working">Receives the working; null for none.</param>
    public static AppliedCredit For(SoilTest test, IReadOnlyList<AppliedMaterial> applied, Area area, DateOnly? planted = null, WorkingSheet? working = null)
    {
        var credits = new List<NutrientCredit>();
        foreach (var material in applied)
        {
            var isLater = test.Sampled is not { } sampled || material.Date >= sampled;
            var isOfThisSeason = planted is { } day ? SeasonOfSpreading.Of(material.Date, day) == 1 : isLater;
            Add(credits, material, MassPerArea.Of(material.Amount, area), n => n == PlantNutrient.N ? isOfThisSeason : isLater, working);
        }

        return new AppliedCredit(credits, applied.Count > 0 && test.Sampled is null
            ? [new Assumption("sampling-date-unknown", "The soil test has no sampling date, so everything listed as spread counts as spread after it.", Citation.OurJudgement)]
            : []);
    }

    private static void Add(List<NutrientCredit> credits, AppliedMaterial applied, MassPerArea rate, Func<PlantNutrient, bool> counts, WorkingSheet? working)
    {
        foreach (var nutrient in Enum.GetValues<PlantNutrient>())
        {
            if (!counts(nutrient) || nutrient.Balanced() is not { } balanced || !applied.Analysis.Planned.TryGetValue(balanced, out var share) || share == 0)
            {
                continue;
            }

            var source = SourceOf(applied.Analysis, balanced);
            var low = MaterialFormulas.NutrientFromMaterial.Of((rate, MassShare.FromFraction(share)), working, Origin.Given("what was spread"), Origin.From(source));
            var high = applied.Analysis.High.TryGetValue(balanced, out var highShare) ? MassPerArea.Larger(low, rate * highShare) : low;
            credits.Add(new NutrientCredit(nutrient, From(applied), low, high, null, source));
        }
    }

    /// <summary>How the credits of a spreading are named.</summary>
    /// <param name="applied">What was spread.</param>
    public static string From(AppliedMaterial applied) => Invariant($"{applied.Material.Name}, spread {applied.Date:yyyy-MM-dd}");

    private static Citation SourceOf(MaterialAnalysis analysis, Nutrient nutrient) =>
        analysis.Sources.TryGetValue(nutrient, out var sources) && sources.Count > 0 ? sources[0] : Citation.OurArithmetic;
}
