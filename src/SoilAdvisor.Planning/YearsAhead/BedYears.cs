using System.Globalization;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning.YearsAhead;

/// <summary>Where phosphorus and potassium of a bed are heading under its plan.</summary>
internal sealed class BedYears(FarmRequest request, Tables tables, Offers offers)
{
    /// <summary>Years shown when nobody said how many. Ours, printed.</summary>
    public const int UsualYears = 5;

    private static readonly Assumption UsualYearsTaken = new(
        "years-not-given",
        string.Create(CultureInfo.InvariantCulture, $"The number of years was not given: {UsualYears} are shown, of phosphorus and potassium where the test does not stand in the guide's target."),
        Citation.OurJudgement);

    /// <summary>The years ahead of a bed; null where nobody asked and both tests stand in their targets.</summary>
    public YearsAheadPlan? Of(PreparedBed prepared, IReadOnlyList<MaterialApplication> applications, WorkingSheet? working)
    {
        working?.Section("Phosphorus over the years");
        var phosphorus = Outlook(prepared, Analyte.P, question => Outlooks.OfPhosphorus(question, SupplyOf<TotalP2O5>(prepared, applications), working));
        working?.Section("Potassium over the years");
        var potassium = Outlook(prepared, Analyte.K, question => Outlooks.OfPotassium(question, SupplyOf<K2O>(prepared, applications), working));
        return phosphorus is null && potassium is null ? null : new YearsAheadPlan(
            request.Years ?? UsualYears,
            phosphorus,
            potassium,
            phosphorus is not null && !prepared.Phosphorus.NoManureOrCompost ? Holds(prepared, working) : [],
            prepared.Phosphorus.NoManureOrCompost ? WithoutPhosphorus(prepared) : null);
    }

    /// <summary>What the years ahead take for granted.</summary>
    public IEnumerable<Assumption> Assumptions(YearsAheadPlan? plan) => plan is null
        ? []
        : plan.Outlooks.Where(o => o.IsGiven).SelectMany(o => o.Value.Assumptions).Concat(request.Years is null ? [UsualYearsTaken] : []);

    private Answer<NutrientOutlook>? Outlook(PreparedBed prepared, Analyte analyte, Func<OutlookQuestion, Answer<NutrientOutlook>> of)
    {
        var rating = prepared.Ratings.FirstOrDefault(r => r.Analyte == analyte && r.Scale.Index is null);
        if (request.Years is null && rating?.Standing is null or Standing.Target or Standing.Information)
        {
            return null;
        }

        return rating is null
            ? Answer<NutrientOutlook>.Refused("nutrient-not-rated", $"{Words.Analytes.IdOf(analyte)} is not rated, so nothing can be said of its years ahead.", "Have it tested by the extractant of the guide, or choose a guide that covers your test.")
            : of(new OutlookQuestion(prepared.Bed.SoilTest, rating, prepared.Bed.Plantings, request.Region, request.Years ?? UsualYears, tables.Variability, tables.TestMovements));
    }

    private static Supply<TForm> SupplyOf<TForm>(PreparedBed prepared, IReadOnlyList<MaterialApplication> applications)
        where TForm : IBalancedForm
    {
        var (bed, lime) = (prepared.Bed, prepared.Lime.Supplied[TForm.Nutrient]);
        var since = SpreadSinceSample.Materials(bed).Select(a => (a.Analysis, Rate: MassPerArea.Of(a.Amount, bed.Area))).ToList();
        return new Supply<TForm>(
            new(Sum(applications.Select(a => a.Rate * a.Offered.Analysis.Share(TForm.Nutrient)))),
            new(Sum(applications.Select(a => a.Rate * High(a.Offered.Analysis, TForm.Nutrient)))),
            new(Sum(since.Select(s => s.Rate * s.Analysis.Share(TForm.Nutrient))) + lime),
            new(Sum(since.Select(s => s.Rate * High(s.Analysis, TForm.Nutrient))) + lime));
    }

    private IReadOnlyList<HoldRate> Holds(PreparedBed prepared, WorkingSheet? working) => SeasonRemovals.OfPhosphate(prepared.Bed.Plantings).TryGet(out var removal, out _) && !removal.Removed.Amount.IsZero
        ? HoldRates.Of(prepared.Offered.Where(o => offers.Listed || o.Material.Category is "compost" or "processed-manure"), removal.Removed, working)
        : [];

    private static Cited<string> WithoutPhosphorus(PreparedBed prepared)
    {
        var rating = prepared.Ratings.FirstOrDefault(r => r.Analyte == Analyte.P);
        var stands = rating is null ? "Soil phosphorus" : $"Soil phosphorus ({rating.Amount} {Words.Units.IdOf(rating.Scale.Unit)}, class {rating.Class.Name})";
        return new Cited<string>(
            string.Create(CultureInfo.InvariantCulture, $"{stands} is at the guide's stop limit. The plan brings no manure and no compost here, and at most {PhosphorusLimit.TracePoundsPerAcre} lb/acre of total phosphate (P2O5) as a trace in other materials: more feeds no crop, and rain carries it into water. Only harvests take it out."),
            rating?.Source ?? Citation.OurJudgement);
    }

    private static double High(MaterialAnalysis analysis, Nutrient nutrient) => Math.Max(analysis.Share(nutrient), analysis.High.GetValueOrDefault(nutrient));

    private static MassPerArea Sum(IEnumerable<MassPerArea> amounts) => amounts.Aggregate(default(MassPerArea), (a, b) => a + b);
}
