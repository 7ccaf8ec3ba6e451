using System.Globalization;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.Beds;

/// <summary>Turns solved rates into what a grower does: how much on the bed, when, what for, at what cost.</summary>
internal sealed class Spreading(Bed bed, BedNeed need, MaterialPlan plan, Offers offers, decimal? phAfterLiming)
{
    private const double CapRoundingPoundsPerAcre = 0.01;

    // The printed split of the nitrogen is said once a planting, with the first material that brings nitrogen.
    private readonly HashSet<int> splitSaid = [];

    public IReadOnlyList<MaterialApplication> All(WorkingSheet? working) =>
    [
        .. Enumerable.Range(0, plan.Model.Variables.Count)
            .Where(i => !plan.Solution.Amounts[i].IsZero)
            .OrderBy(i => plan.Model.Variables[i].PlantingIndex)
            .ThenByDescending(i => plan.Model.Variables[i].Offered.WaitBeforeSowingDays)
            .ThenByDescending(i => plan.Solution.Amounts[i])
            .ThenBy(i => plan.Model.Variables[i].Offered.Material.Id, StringComparer.Ordinal)
            .Select(i => One(i, working)),
    ];

    private MaterialApplication One(int index, WorkingSheet? working)
    {
        var (offered, planting) = (plan.Model.Variables[index].Offered, plan.Model.Variables[index].PlantingIndex);
        var rate = plan.Solution.Amounts[index];
        working?.Section($"{offered.Material.Name} for {bed.Plantings[planting].Crop.Name}");
        var served = plan.Model.Requirements.Where(r => r.AsksForSomething && r.Counts(planting) && offered.Analysis.Share(r.Nutrient) > 0).Select(r => r.Nutrient).ToList();
        if (working is not null)
        {
            offers.WriteAnalysis(offered, phAfterLiming, working);
            Show(offered, rate, served, working);
        }

        var cap = ReachedCap(index);
        var perBed = AreaFormulas.RatePerBed.Of((rate, bed.Area), working, Origin.From(Citation.OurArithmetic), Origin.Given(bed.AreaShown));
        return new MaterialApplication(
            offered,
            planting,
            rate,
            perBed,
            VolumeMeasures.For(offered.Material, perBed),
            Costs.Of(offered, perBed),
            cap is null ? When(offered, planting, served) : string.Create(CultureInfo.InvariantCulture, $"{When(offered, planting, served)} Limited to {cap.Most.PoundsPerAcre:0.#} lb/acre: {cap.Reason}."),
            bed.Plantings[planting].Planted?.AddDays(-offered.WaitBeforeSowingDays),
            string.Join(", ", served.Select(n => n.Words())))
        {
            Cap = cap,
        };
    }

    private RateCap? ReachedCap(int index)
    {
        var variables = plan.Model.Variables;
        if (SeasonCap.Of(variables[index].Offered, bed) is not { } cap)
        {
            return null;
        }

        var ofAll = Enumerable.Range(0, variables.Count)
            .Where(i => variables[i].Offered.Material.Id == variables[index].Offered.Material.Id)
            .Sum(i => plan.Solution.Amounts[i].PoundsPerAcre);
        return ofAll >= cap.Left.PoundsPerAcre - CapRoundingPoundsPerAcre ? cap.Cap : null;
    }

    private static void Show(OfferedMaterial offered, MassPerArea rate, List<Nutrient> served, WorkingSheet working)
    {
        foreach (var nutrient in served)
        {
            var source = offered.Analysis.Sources.TryGetValue(nutrient, out var sources) && sources.Count > 0 ? sources[0] : Citation.OurArithmetic;
            MaterialFormulas.NutrientFromMaterial.Of((rate, MassShare.FromFraction(offered.Analysis.Share(nutrient))), working, Origin.From(Citation.OurArithmetic), Origin.From(source));
        }
    }

    private string When(OfferedMaterial offered, int planting, List<Nutrient> served)
    {
        var crop = bed.Plantings[planting].Crop.Name;
        var when = offered.WaitBeforeSowingDays == 0
            ? $"At or before planting {crop}."
            : string.Create(CultureInfo.InvariantCulture, $"At least {offered.WaitBeforeSowingDays} days before planting {crop}.");
        if (!served.Contains(Nutrient.AvailableN) || !splitSaid.Add(planting))
        {
            return when;
        }

        var splits = need.Needs
            .Where(n => n.Nutrient == PlantNutrient.N && n.PlantingIndex == planting)
            .SelectMany(n => n.Splits)
            .OrderBy(s => s.Order)
            .Select(s => s.Rate is { } part ? string.Create(CultureInfo.InvariantCulture, $"{Range(part)} lb/acre {s.When}") : s.When)
            .ToList();
        return splits.Count == 0 ? when : $"{when} The guide splits the nitrogen: {string.Join("; ", splits)}.";
    }

    private static string Range(RateRange range) => range.IsOneNumber
        ? string.Create(CultureInfo.InvariantCulture, $"{range.Low.PoundsPerAcre:0.#}")
        : string.Create(CultureInfo.InvariantCulture, $"{range.Low.PoundsPerAcre:0.#} to {range.High.PoundsPerAcre:0.#}");
}
