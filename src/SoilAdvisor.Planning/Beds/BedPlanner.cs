using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Planning.CoverSeason;
using SoilAdvisor.Planning.YearsAhead;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning.Beds;

/// <summary>Walks one bed through the rooms in their order. Beds know nothing of each other.</summary>
internal sealed class BedPlanner(FarmRequest request, Tables tables, Guide guide, Offers offers)
{
    // Used elsewhere in the walk; that a guide does not rate them is no loss.
    private static readonly Analyte[] NotRatedAsNutrients =
        [Analyte.Ph, Analyte.BufferPh, Analyte.CationExchangeCapacity, Analyte.OrganicMatter, Analyte.Acidity, Analyte.LimeBufferCapacity, Analyte.ElectricalConductivity, Analyte.NitrateN, Analyte.AmmoniumN];

    /// <summary>Everything before materials are chosen: ratings, need, lime, and what may be spread.</summary>
    /// <param name="bed">The bed.</param>
    public PreparedBed Prepare(Bed bed)
    {
        var working = request.WithWorking ? new WorkingSheet() : null;
        var refused = new List<(string Pointer, Refusal Refusal)>();
        var ratings = Rate(bed, refused, working);
        var certainties = Certainties(bed, ratings, working);
        working?.Section("Indices");
        var indices = guide.RateIndices(bed.SoilTest, ContextOf(bed), working);
        var cations = CationsOf(bed, working);
        var need = NeedOf(bed, ratings, working);
        var floors = BedFloors.Of(need, working);
        var lime = BedLime.Of(bed, request, tables, offers, ratings, floors, working);
        var (phosphorus, offered) = (PhosphorusLimit.Of(need, ratings), offers.For(lime.PhAfterLiming));
        var dressing = BedStructure.Of(bed, request.Region, tables, offered, phosphorus, floors, lime, working);
        var rules = new BedModel(bed, lime, phosphorus, floors, request.Limits, dressing is { IsGiven: true, Value: var compost } ? compost : null);
        var leftOut = new SortedSet<string>(StringComparer.Ordinal);
        return new PreparedBed(bed, ratings, need, lime, floors, rules, offered, rules.For(offered, offers.Priced, leftOut), leftOut, refused, working)
        {
            Certainties = certainties,
            Cations = cations,
            Indices = indices,
            Phosphorus = phosphorus,
            Dressing = dressing,
        };
    }

    /// <summary>Everything once materials are chosen.</summary>
    /// <param name="prepared">The bed.</param>
    /// <param name="plan">What is spread on it.</param>
    public BedPlan Finish(PreparedBed prepared, MaterialPlan plan)
    {
        var (bed, ratings, need, lime) = (prepared.Bed, prepared.Ratings, prepared.Need, prepared.Lime);
        IReadOnlyList<MaterialApplication> applications =
        [
            .. prepared.Dressing is { IsGiven: true, Value: var dressing } ? [BedStructure.Application(dressing, bed, prepared.Working)] : Array.Empty<MaterialApplication>(),
            .. new Spreading(bed, need, plan, offers, lime.PhAfterLiming).All(prepared.Working),
        ];
        var years = new BedYears(request, tables, offers);
        var ahead = years.Of(prepared, applications, prepared.Working);
        var shortfalls = Shortfalls(lime, plan, prepared.Rules, prepared.Offered);
        var balances = Balances.Of(prepared.Floors, prepared.Rules, lime, applications);
        List<(string Pointer, Refusal Refusal)> refused = [.. prepared.Refused, .. need.Refused];
        if (lime.Refused is { } noLime)
        {
            refused.Add(("/soilTest", noLime));
        }

        if (prepared.Dressing is { IsGiven: false, Reason: var noDressing })
        {
            refused.Add(("/structure", noDressing));
        }

        var state = StateOf(need, lime);
        var coverCrops = CoverCropsOf(bed, prepared.Floors);
        var nitrogen = new NitrogenInTimePlan(bed, need, applications, request, tables).Of(prepared.Working);
        return new BedPlan(
            bed,
            state,
            BedSummary.Of(bed, state, lime, applications, shortfalls, refused.Select(r => r.Refusal).FirstOrDefault()),
            ratings,
            need,
            lime.Plan,
            applications,
            balances,
            shortfalls,
            coverCrops,
            FindingsOf(bed, applications, ratings, need, lime, prepared.Working),
            CautionsFor.Plan(bed, applications, lime.Plan, tables.Cautions),
            [.. BedWarnings.Of(bed, request.Date, lime, prepared.Floors, applications, balances), .. prepared.LeftOut],
            refused,
            [.. Assumptions(bed, need, lime, prepared.Rules, ratings, prepared.Certainties, applications).Concat(years.Assumptions(ahead)).Concat(nitrogen?.Assumptions ?? []).Concat(coverCrops?.Assumptions ?? []).DistinctBy(a => (a.Code, a.Text))],
            Costs.Sum([.. applications.Select(a => a.Cost), lime.Plan?.Chosen?.Cost]),
            prepared.Working?.Lines ?? [])
        {
            Certainties = prepared.Certainties,
            Cations = prepared.Cations,
            Indices = prepared.Indices,
            Ceilings = guide.CeilingsFor(bed.SoilTest),
            NitrogenInTime = nitrogen,
            YearsAhead = ahead,
            StructureDressing = prepared.Dressing,
        };
    }

    private static BedState StateOf(BedNeed need, BedLime lime) => (need.Needs.Count, lime.Plan) switch
    {
        (0, null) => BedState.Refused,
        (_, null) => BedState.Partly,
        _ => need.Refused.Count > 0 ? BedState.Partly : BedState.Planned,
    };

    private static IReadOnlyList<Assumption> Assumptions(Bed bed, BedNeed need, BedLime lime, BedModel model, IReadOnlyList<Rating> ratings, Dictionary<Rating, Answer<RatingCertainty>> certainties, IReadOnlyList<MaterialApplication> applications) =>
    [
        .. bed.Assumptions
            .Concat(ratings.SelectMany(r => r.Assumptions))
            .Concat(certainties.Values.SelectMany(c => c.IsGiven ? c.Value.Assumptions : []))
            .Concat(need.Assumptions)
            .Concat(lime.Plan?.Requirement.Assumptions ?? [])
            .Concat(lime.Plan?.Chosen?.Offered.Analysis.Assumptions ?? [])
            .Concat(lime.Plan?.Chosen?.How.Noticed ?? [])
            .Concat(model.Assumptions)
            .Concat(applications.SelectMany(a => a.Offered.Analysis.Assumptions))
            .DistinctBy(a => (a.Code, a.Text)),
    ];

    private RatingContext ContextOf(Bed bed) => new(bed.Plantings.Count > 0 ? bed.Plantings[0].Crop.Id : null, null, request.Subregion);

    private List<Rating> Rate(Bed bed, List<(string, Refusal)> refused, WorkingSheet? working)
    {
        working?.Section("Ratings");
        var context = ContextOf(bed);
        var ratings = new List<Rating>();
        for (var i = 0; i < bed.SoilTest.Readings.Count; i++)
        {
            var reading = bed.SoilTest.Readings[i];
            if (guide.Rate(bed.SoilTest, reading, context, working).TryGet(out var rating, out var why))
            {
                ratings.Add(rating);
            }
            else if (!NotRatedAsNutrients.Contains(reading.Analyte))
            {
                refused.Add(($"/soilTest/readings/{i}", why));
            }
        }

        return ratings;
    }

    private Dictionary<Rating, Answer<RatingCertainty>> Certainties(Bed bed, IReadOnlyList<Rating> ratings, WorkingSheet? working)
    {
        working?.Section("How sure the ratings are");
        var certainties = new Dictionary<Rating, Answer<RatingCertainty>>(ReferenceEqualityComparer.Instance);
        foreach (var rating in ratings)
        {
            certainties.Add(rating, RatingCertainties.Of(rating, bed.SoilTest, tables.Variability, working));
        }

        return certainties;
    }

    private Answer<CationBalance>? CationsOf(Bed bed, WorkingSheet? working)
    {
        working?.Section("Cations");
        return CationCalculation.IsMeantFor(bed.SoilTest) ? CationCalculation.For(bed.SoilTest, tables.Cations, null, working) : null;
    }

    private BedNeed NeedOf(Bed bed, IReadOnlyList<Rating> ratings, WorkingSheet? working)
    {
        working?.Section("Need");
        var need = NeedCalculation.For(bed.SoilTest, guide, tables.RateTables, ratings, bed.Plantings, bed.Previous, tables.CoverCrops, working);
        working?.Section("Spread since the sample");
        var planted = bed.Plantings.Select(p => p.Planted).FirstOrDefault(d => d is not null) ?? request.Date;
        var applied = AppliedCredits.For(bed.SoilTest, bed.Applied, bed.Area, planted, working);
        var carried = CarryOver.For(bed.Applied, planted, bed.Area, tables.Nitrogen, request.Region, working);
        return need with { Credits = [.. need.Credits, .. applied.Credits, .. carried.Credits], Assumptions = [.. need.Assumptions, .. applied.Assumptions, .. carried.Assumptions] };
    }

    private IReadOnlyList<Finding> FindingsOf(Bed bed, IReadOnlyList<MaterialApplication> applications, IReadOnlyList<Rating> ratings, BedNeed need, BedLime lime, WorkingSheet? working)
    {
        working?.Section("Micronutrients");
        return
        [
            .. OrganicChecks.For(bed, applications, ratings, need, tables.OrganicRules, request.Date, lime.Plan?.Chosen?.Offered.Material),
            .. MicronutrientGuard.For(bed, applications, ratings, need, tables.OrganicRules, request.Date, tables.Materials.Values, working),
        ];
    }

    private IReadOnlyList<Shortfall> Shortfalls(BedLime lime, MaterialPlan plan, BedModel model, IReadOnlyList<OfferedMaterial> offered)
    {
        var missed = plan.Solution.MeetsAll ? [] : new Remedies(plan, model, offered, offers.NotOffered(lime.PhAfterLiming)).All();
        return [.. lime.Shortfall is { } noStone ? [noStone] : Array.Empty<Shortfall>(), .. model.PassedCeilings, .. missed];
    }

    private CoverCropSelection? CoverCropsOf(Bed bed, IReadOnlyList<PlantingFloor> floors)
    {
        if (bed.Gap is not { } gap)
        {
            return null;
        }

        var phosphate = floors.FirstOrDefault(f => f.Nutrient == Nutrient.AvailableP2O5)?.Low;
        var isShort = phosphate > default(MassPerArea);
        return CoverCropChoices.For(
            new CoverCropQuestion(gap)
            {
                Weights = request.CoverCropWeights,
                Climate = request.Climate ?? FarmClimate.Unknown with { Frost = request.Frost, Region = request.Region },
                LastCrop = BedSeason.LastCrop(gap, bed.Plantings, bed.Previous, tables.Crops),
                NextCrop = BedSeason.NextCrop(gap, bed.Plantings)?.Crop,
                Area = bed.Area,
                PhosphorusShort = isShort,
                PhosphateShort = isShort ? phosphate : null,
            },
            tables.CoverCropTables);
    }
}
