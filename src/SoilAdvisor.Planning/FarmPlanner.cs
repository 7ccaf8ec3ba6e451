using System.Globalization;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Prices;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.CoverSeason;
using SoilAdvisor.Planning.FarmWide;
using SoilAdvisor.Planning.FieldWork;
using SoilAdvisor.Planning.MaterialChoice;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning;

/// <summary>
/// From soil tests and beds to what to spread. The beds are prepared one by one, in the order given, and their materials chosen
/// together; the same request and tables give the same plan, bit for bit, with and without working. The solver is loaded only when a bed needs a nutrient.
/// </summary>
public static class FarmPlanner
{
    /// <summary>Plans a farm.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="tables">The reference tables.</param>
    /// <param name="cancel">Stops between two beds.</param>
    /// <returns>The plan, or a refusal when nothing could be computed: no bed, no guide, a material listed twice, prices in two currencies.</returns>
    public static Answer<FarmPlan> Plan(FarmRequest request, Tables tables, CancellationToken cancel)
    {
        if (request.Beds.Count == 0)
        {
            return Answer<FarmPlan>.Refused("no-beds", "The request names no bed.", "Give at least one bed with its size, soil test and crops.");
        }

        if (ListedTwice(request) is { } twice)
        {
            return Answer<FarmPlan>.Refused(twice);
        }

        if (CurrencyConflict(request) is { } conflict)
        {
            return Answer<FarmPlan>.Refused(conflict);
        }

        var crops = request.Beds.SelectMany(b => b.Plantings).Select(p => p.Crop.Id).Distinct(StringComparer.Ordinal).ToList();
        var tests = request.Beds.Select(b => b.SoilTest).DistinctBy(t => t.Id).ToList();
        return GuideChoice.For(tests, request.Guide, request.Region, crops, tables).Select(chosen => With(chosen, request, tables, cancel));
    }

    private static FarmPlan With(GuideSelection chosen, FarmRequest request, Tables tables, CancellationToken cancel)
    {
        var offers = Offers.Of(request, tables);
        var planner = new BedPlanner(request, tables, chosen.Guide, offers);
        var prepared = new List<PreparedBed>(request.Beds.Count);
        foreach (var bed in request.Beds)
        {
            cancel.ThrowIfCancellationRequested();
            prepared.Add(planner.Prepare(bed));
        }

        var materials = FarmMaterials.For(prepared, request.Limits, offers.Priced, cancel);
        var beds = new List<BedPlan>(prepared.Count);
        for (var i = 0; i < prepared.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            beds.Add(planner.Finish(prepared[i], materials.Plans[i]));
        }

        var purchases = Purchases.Of(beds);
        return new FarmPlan(
            request.Farm,
            request.Date,
            chosen.Guide,
            chosen.Reason,
            chosen.Others,
            tables.RateTables.Values.FirstOrDefault(t => t.PairWith(chosen.Guide.Id) is not null),
            Objective(offers, request),
            beds,
            purchases,
            OrganicChecks.OnTheShelf(request.Materials.Select(m => m.Material), tables.OrganicRules),
            Warnings(chosen.Guide, offers),
            [.. chosen.Assumptions, .. Assumptions(offers, request)],
            beds.Any(b => b.State != BedState.Planned),
            Costs.Sum(beds.Select(b => b.Cost)),
            Choice(materials, beds, purchases, request.Limits))
        {
            Suspicions = Suspicions(request, tables),
            FieldWork = FieldWorkPlanning.Of(request, beds, materials.Plans, purchases, tables),
            MaterialPrices = MaterialPrices.Of(offers.Priceable),
            MaterialTests = offers.Tests,
            CoverSeason = BedSeason.Plan(beds, request.CoverSeason, tables, cancel),
        };
    }

    private static FarmChoice Choice(FarmMaterials materials, IReadOnlyList<BedPlan> beds, IReadOnlyList<Purchase> purchases, FarmLimits limits)
    {
        var passes = beds.Sum(b => b.Applications.Count);
        var bought = Costs.Sum(purchases.Select(p => p.Cost));
        var freight = Costs.Sum(purchases.Select(p => p.Freight));
        Money? labour = limits.LabourPerPass is { } pass ? pass with { Value = pass.Value * passes } : null;
        return new FarmChoice(
            materials.DifferentNeeds,
            beds.SelectMany(b => b.Applications).Select(a => a.Offered.Material.Id).Distinct(StringComparer.Ordinal).Count(),
            passes,
            materials.Gap,
            materials.Ended,
            bought,
            freight,
            labour,
            Costs.Sum([bought, freight, labour]));
    }

    private static IReadOnlyList<(string SoilTest, Suspicion Suspicion)> Suspicions(FarmRequest request, Tables tables) =>
    [
        .. request.Beds.Select(b => b.SoilTest).DistinctBy(t => t.Id)
            .SelectMany(t => SoilTestSuspicions.Of(t, tables.Cations).Where(s => s.Severity == Severity.Suspicion).Select(s => (t.Id, s))),
    ];

    private static string Objective(Offers offers, FarmRequest request) => offers.Priced
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"Least cost of materials. To it are added {MaterialModel.ExcessBurden} {CurrencyOf(request)} for each pound supplied above what is needed of N, total P2O5, K2O, Mg or S, and {MaterialModel.MassBurden} {CurrencyOf(request)} for each pound of material, so that of two plans that cost the same the cleaner and lighter one is taken. Both figures are ours and are in no cost shown.")
        : "No material has a price. Least supply above what is needed of N, total P2O5, K2O, Mg and S, in pounds; then least weight of material.";

    private static IReadOnlyList<string> Warnings(Guide guide, Offers offers) => guide.CalibratedOn == "field-crops"
        ? [$"The guide {guide.Id} was calibrated on field crops. Vegetables often ask for more: treat its classes with care.", .. offers.NotUsed]
        : [.. offers.NotUsed];

    private static IReadOnlyList<Assumption> Assumptions(Offers offers, FarmRequest request)
    {
        var assumptions = new List<Assumption>();
        if (!offers.Listed)
        {
            assumptions.Add(new Assumption("materials-not-listed", "You listed no materials: the plan chooses among the materials of the tables, without prices. Raw manure, liquids, mulches, elemental sulfur and what the organic rule allows only under a condition of 205.602 (sodium nitrate, potassium chloride, ash) enter only when you list them.", Citation.OurJudgement));
        }

        var unpriced = request.Materials.Where(m => m.PricePerKilogram is null).Select(m => m.Material.Name).ToList();
        if (offers.Priced && unpriced.Count > 0)
        {
            assumptions.Add(new Assumption("no-price", $"{string.Join(", ", unpriced)} {(unpriced.Count == 1 ? "has" : "have")} no price: taken as on hand, and no cost is counted for {(unpriced.Count == 1 ? "it" : "them")}.", Citation.OurJudgement));
        }

        if (request.Beds.Any(b => b.Plantings.Count > 1 && (b.Previous.Count > 0 || b.Applied.Count > 0)))
        {
            assumptions.Add(new Assumption("credits-first-planting", "Credits and what was spread since the sample count for the first planting of a bed; what is left over is not carried to the next.", Citation.OurJudgement));
        }

        return assumptions;
    }

    private static Refusal? ListedTwice(FarmRequest request) =>
        request.Materials.GroupBy(m => m.Material.Id, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? new Refusal("material-listed-twice", $"{twice.First().Material.Name} is listed {twice.Count()} times.", "List each material once, with one price and its whole stock.")
            : null;

    private static Refusal? CurrencyConflict(FarmRequest request)
    {
        var currencies = request.Materials
            .Select(m => m.PricePerKilogram?.Currency)
            .Append(request.Currency)
            .Append(request.Limits.Budget?.Currency)
            .Append(request.Limits.LabourPerPass?.Currency)
            .Append(request.Limits.ExcessPenalty?.Currency)
            .Concat(request.Materials.Select(m => m.Freight?.Currency))
            .OfType<string>()
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .ToList();
        return currencies.Count > 1
            ? new Refusal("two-currencies", $"Prices are given in {string.Join(" and ", currencies)}.", "Give all prices in one currency; none is converted here.")
            : null;
    }

    private static string CurrencyOf(FarmRequest request) =>
        request.Currency ?? request.Materials.Select(m => m.PricePerKilogram?.Currency).OfType<string>().First();
}
