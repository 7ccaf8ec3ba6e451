using System.Globalization;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning.Beds;

/// <summary>The nitrogen of a planned bed through its season. It changes no amount of the plan: it says when each part is given and what comes of it.</summary>
internal sealed class NitrogenInTimePlan(Bed bed, BedNeed need, IReadOnlyList<MaterialApplication> applications, FarmRequest request, Tables tables)
{
    private readonly List<Assumption> assumptions = [];

    /// <summary>The account; null where no planting has a nitrogen rate.</summary>
    /// <param name="working">Receives the working; null for none.</param>
    public NitrogenInTime? Of(WorkingSheet? working)
    {
        var plantings = Enumerable.Range(0, bed.Plantings.Count)
            .Select(k => (Index: k, Need: need.Needs.FirstOrDefault(n => n.Nutrient == PlantNutrient.N && n.PlantingIndex == k)))
            .Where(p => p.Need is not null)
            .Select(p => One(p.Index, p.Need!, working))
            .ToList();
        return plantings.Count == 0 ? null : new NitrogenInTime(plantings, Factors(), [.. assumptions.DistinctBy(a => (a.Code, a.Text))]);
    }

    private PlantingNitrogen One(int index, NutrientNeed rate, WorkingSheet? working)
    {
        var planting = bed.Plantings[index];
        var own = applications.Where(a => a.PlantingIndex == index).ToList();
        IReadOnlyList<NutrientCredit> credits = index == 0 ? [.. need.Credits.Where(c => c.Nutrient == PlantNutrient.N)] : [];
        working?.Section($"Nitrogen in time: {planting.Crop.Name}");
        var split = new NitrogenDressings(bed, rate, request.Date, request.Limits.SmallestRate);
        var dressings = split.Of(own, credits.Select(c => c.Low).Aggregate(default(MassPerArea), (a, b) => a + b), working);
        assumptions.AddRange(split.Assumptions);
        var days = new NitrogenDays(bed, planting, tables.Nitrogen, request.SoilTemperature);
        var tied = Fill(days, dressings, index, credits, working);
        if (days.UsesTemperature && request.SoilTemperature is null)
        {
            assumptions.Add(new Assumption("soil-temperature-span", "No soil temperature was given: what quick meals have released is shown over the published soil temperatures, 10 to 25 °C (50 to 77 °F).", tables.Nitrogen.Points[0].Source));
        }

        return new PlantingNitrogen(
            index,
            planting.Crop,
            rate.Rate,
            dressings,
            days.Of(dressings),
            credits,
            tied,
            UptakeWords.For(planting.Crop, planting.Planted, tables.Nitrogen),
            NitrateTestOf(planting, dressings),
            AfterHarvest(rate, dressings, credits, tied),
            rate.Source);
    }

    private RateRange? Fill(NitrogenDays days, IReadOnlyList<NitrogenDressing> dressings, int index, IReadOnlyList<NutrientCredit> credits, WorkingSheet? working)
    {
        var ties = new List<RateRange>();
        RateRange? Tie(Material material, MaterialAnalysis analysis, MassPerArea amount)
        {
            var range = TieUp.Of(material, analysis, amount, tables.Nitrogen, working);
            ties.AddRange(range is { } tie ? [tie] : []);
            return range;
        }

        foreach (var dressing in dressings)
        {
            foreach (var part in dressing.Parts)
            {
                days.Add(part, dressing, Tie(part.Offered.Material, part.Offered.Analysis, part.Rate));
            }
        }

        var fromSpreading = index == 0 ? SpreadForThisSeason().ToList() : [];
        foreach (var applied in fromSpreading)
        {
            days.Add(applied, Tie(applied.Material, applied.Analysis, MassPerArea.Of(applied.Amount, bed.Area)));
        }

        // What was spread for this season stands in the days itself; its credit would count it twice.
        var said = fromSpreading.Select(AppliedCredits.From).ToHashSet(StringComparer.Ordinal);
        foreach (var credit in credits.Where(c => !said.Contains(c.From)))
        {
            days.Add(credit);
        }

        return ties.Count == 0 ? null : ties.Aggregate((a, b) => a + b);
    }

    private IEnumerable<AppliedMaterial> SpreadForThisSeason()
    {
        var planted = bed.Plantings.Select(p => p.Planted).FirstOrDefault(d => d is not null) ?? request.Date;
        return bed.Applied.Where(a => SeasonOfSpreading.Of(a.Date, planted) == 1);
    }

    private Cited<string>? NitrateTestOf(Planting planting, IReadOnlyList<NitrogenDressing> dressings)
    {
        if (tables.SidedressTables.FirstOrDefault(t => t.Crop == planting.Crop.Id) is not { } table)
        {
            return null;
        }

        var book = dressings.Where(d => d.Time != DressingTime.Base).Select(d => d.Wanted).Aggregate(default(RateRange), (a, b) => a + b);
        var inPlace = book.High.IsZero ? "" : $" in place of the {Text(book)} lb/acre of the book";
        if (NitrateTest.IsMeantBy(bed.SoilTest))
        {
            var manured = SpreadForThisSeason().Any(a => a.Material.Manure != ManureKind.None);
            return NitrateTest.For(bed.SoilTest, planting.Crop, manured, tables.SidedressTables).TryGet(out var advice, out var why)
                ? new Cited<string>(string.Create(CultureInfo.InvariantCulture, $"Your nitrate test ({advice.Nitrate} mg/kg NO3-N, {(manured ? "manured" : "unmanured")} soil) sets the side-dressing: {advice.Rate.PoundsPerAcre:0.#} lb/acre of nitrogen{inPlace}. Scale what is sidedressed to it."), advice.Source)
                : new Cited<string>(why.Message, table.Source);
        }

        return new Cited<string>($"A pre-sidedress nitrate test sets the side-dressing{inPlace}: sample about a week before, and read it with the table for {planting.Crop.Name}. It counts what manure, cover crops and organic matter have released, so no credit is taken off beside it.", table.Source);
    }

    private static Cited<string> AfterHarvest(NutrientNeed rate, IReadOnlyList<NitrogenDressing> dressings, IReadOnlyList<NutrientCredit> credits, RateRange? tied)
    {
        var parts = dressings.SelectMany(d => d.Parts).ToList();
        var most = parts.Select(p => p.Nitrogen.High).Concat(credits.Select(c => MassPerArea.Larger(c.Low, c.High))).Aggregate(tied?.High ?? default, (a, b) => a + b);
        var left = most - rate.Rate.Low;
        return left.PoundsPerAcre > 0.5
            ? new Cited<string>($"If release runs at the high end, up to {Figure(left)} lb/acre of nitrogen more than the guide's rate has come by the end. What the crop leaves turns to nitrate, and rain can wash it out: sow a cover crop soon after the harvest.", Citation.OurArithmetic)
            : new Cited<string>("Even at the high end no more than the guide's rate comes by the end. What crop residues release later can still be washed out: do not leave the bed bare over winter.", Citation.OurArithmetic);
    }

    private IReadOnlyList<NitrogenFactor> Factors() =>
    [
        .. applications.Select(a => (a.Offered.Material, a.Offered.Analysis))
            .Concat(SpreadForThisSeason().Select(a => (a.Material, a.Analysis)))
            .DistinctBy(m => m.Material.Id)
            .Select(m => NitrogenFactorWords.For(m.Material, m.Analysis, tables.Nitrogen, request.Region))
            .OfType<NitrogenFactor>(),
    ];

    private static string Text(RateRange range) => Figure(range.Low) == Figure(range.High) ? Figure(range.Low) : $"{Figure(range.Low)} to {Figure(range.High)}";

    private static string Figure(MassPerArea amount) => amount.PoundsPerAcre.ToString("0", CultureInfo.InvariantCulture);
}
