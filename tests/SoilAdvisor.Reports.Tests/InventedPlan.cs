using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Prices;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Reports.Tests;

/// <summary>
/// A plan made up for these tests. Guide, limits, materials, prices and rules are invented and stand for nothing outside this file.
/// </summary>
internal static class InventedPlan
{
    public static readonly Citation GuidePage = new("invented-guide", "Table 1", Evidence.Seen);
    public static readonly Citation RatePage = new("invented-rates", "Table 2", Evidence.FromMemory);
    public static readonly Citation MaterialPage = new("invented-materials", "row 4", Evidence.Seen);
    public static readonly Citation RulePage = new("invented-rule", "section 9", Evidence.Seen);

    public static IReadOnlyDictionary<string, Source> Bibliography { get; } = new[]
    {
        new Source("invented-guide", "A. Nobody", "Invented limits for tests", "Invented press", "Leaflet 1", 2020, "https://example.org/limits", null, null),
        new Source("invented-rates", null, "Invented rates for tests", "Invented press", null, 2021, null, null, null),
        new Source("invented-materials", null, "Invented materials for tests", "Invented press", null, null, "https://example.org/materials?a=1&b=2", null, null),
        new Source("invented-rule", null, "Invented rule for tests", "Invented office", "2022", 2022, "javascript:alert(1)", null, null),
        new Source("our-arithmetic", null, "Arithmetic on values that are cited beside it", "this project", null, null, null, null, null),
        new Source("our-judgement", null, "Choices of this project", "this project", null, null, null, null, null),
        new Source("common-practice", null, "Common practice of growers and advisers", "not published in one place", null, null, null, null, null),
    }.ToDictionary(s => s.Id);

    public static Guide Guide { get; } = new(
        "invented-guide", "Invented limits for tests", "Invented press", ["XX"], "vegetables", "vegetables", GuidePage, null,
        [
            Scale(Analyte.P, Extractant.Mehlich3, ReportingUnit.MilligramsPerKilogram, null,
                ("Very low", Standing.Below, null, 15m), ("Low", Standing.Below, 15m, 30m), ("Optimum", Standing.Target, 30m, 50m), ("High", Standing.Above, 50m, 150m), ("Excessive", Standing.Stop, 150m, null)),
            Scale(Analyte.K, Extractant.Mehlich3, ReportingUnit.PoundsPerAcre, 0,
                ("Below optimum", Standing.Below, 0m, 174m), ("Optimum", Standing.Target, 175m, 349m), ("Above optimum", Standing.Above, 350m, null)),
            Scale(Analyte.Ph, null, ReportingUnit.PhUnits, null,
                ("Acid", Standing.Below, null, 6m), ("Good", Standing.Target, 6m, 7m), ("Alkaline", Standing.Above, 7m, null)),
            Scale(Analyte.B, Extractant.HotWater, ReportingUnit.MilligramsPerKilogram, null,
                ("Deficient", Standing.Below, null, 0.5m), ("Sufficient", Standing.Target, 0.5m, null)),
        ]);

    public static FarmPlan Plan() => WithBeds("Invented garden <for tests>", FullBed("1A"), QuietBed("1B"), RefusedBed("2 | low end"));

    public static FarmPlan WithBeds(string farm, params BedPlan[] beds) => new(
        farm,
        new DateOnly(2027, 3, 1),
        Guide,
        "You named it, and it covers Mehlich-3",
        ["invented-neighbour", "invented-far-guide"],
        new RateTable("invented-rates", "Invented rates for tests", "Invented press", ["XX"], RateTableKind.ClassTable, "broadcast-acre", [], [], [], [], [], RatePage, null),
        "Least money, with a small charge for each pound of potash above need",
        beds,
        [
            new Purchase(Meal, Mass.FromPounds(6.5), Mass.FromPounds(2), Mass.FromPounds(4.5), null, new Money(9.9m, "USD"), null),
            new Purchase(Stone with { Pack = Mass.FromPounds(40) }, Mass.FromPounds(23), null, Mass.FromPounds(40), 1, null, new Money(15m, "USD")),
        ],
        [new Finding("invented-records", "XX-ORG", "9.1", FindingState.NotDecidable, "No field history of three years was given", "field history", false, RulePage)],
        ["The soil test is 4 years old; sample again before a large purchase"],
        [new Assumption("invented-currency", "All prices are in USD as given", Citation.OurJudgement)],
        true,
        new Money(12.4m, "USD"),
        new FarmChoice(2, 1, 1, 0, "Nothing ties the beds together: proven", new Money(9.9m, "USD"), new Money(15m, "USD"), null, new Money(24.9m, "USD")))
    {
        FieldWork = FieldWork,
        MaterialPrices =
        [
            new MaterialPrice(Meal, new Money(2.2m, "USD"),
                [
                    new NutrientPrice(Nutrient.AvailableN, MassShare.FromPercent(5), MassShare.FromPercent(8), new Money(44m, "USD"), new Money(27.5m, "USD"), [MaterialPage]),
                    new NutrientPrice(Nutrient.AvailableP2O5, MassShare.FromPercent(3), MassShare.FromPercent(3), new Money(73.333m, "USD"), new Money(73.333m, "USD"), [MaterialPage]),
                ],
                []),
        ],
        MaterialTests = [new MaterialTestFinding(Meal.Material, "Cd", "2 mg/kg of dry matter", "Within the limit of an invented rule", false, RulePage)],
    };

    private static FieldWorkPlan FieldWork => new(
        FieldMeasures.Of(Volume.FromUsGallons(5), Volume.FromUsQuarts(1), null, null, null),
        [
            new FieldPass(1, new DateOnly(2027, 4, 12), Stone.Material, "dose 1 of 2", ["First and by itself."],
                [new MeasuredSpread("1A", null, MassPerArea.FromPoundsPerAcre(2000), new MeasuredAmount(Mass.FromPounds(11.5), Mass.FromPounds(11), MeasuringWay.ToScaleMark, 0, 0, null), [new SupplyChange(Nutrient.CalciumCarbonate, MassPerArea.FromPoundsPerAcre(-78))], "the lime requirement")]),
            new FieldPass(2, new DateOnly(2027, 4, 20), Meal.Material, null, [],
                [
                    new MeasuredSpread("1A", 0, MassPerArea.FromPoundsPerAcre(958.32), new MeasuredAmount(Mass.FromPounds(5.5), Mass.FromPounds(5.4), MeasuringWay.ByVolume, 1, 3, new BulkDensity(Density.FromKilogramsPerCubicMeter(500), MaterialPage)), [new SupplyChange(Nutrient.AvailableN, MassPerArea.FromPoundsPerAcre(-0.9))], null),
                    new MeasuredSpread("2 | low end", 0, MassPerArea.FromPoundsPerAcre(958.32), new MeasuredAmount(Mass.FromPounds(0.2), Mass.FromPounds(0.2), MeasuringWay.Exactly, 0, 0, null), [], null),
                ]),
        ],
        [new MixingBatch(new DateOnly(2027, 4, 20), [new MixPart(Meal.Material, Mass.FromPounds(5.5)), new MixPart(Dust.Material, Mass.FromOunces(0.9))], [new MixPortion("1A", Mass.FromPounds(5.5))])],
        ["Never in a mix: invented stone."],
        [new StripCalibration(Meal.Material, MassPerArea.FromPoundsPerAcre(958.32), ["1A"], Mass.FromPounds(4.4), MassPerArea.FromPoundsPerAcre(217.8))],
        new ProposedCheck(ProposedCheckKind.UntreatedStrip, "1A", "Leave a strip across bed 1A without any of it", "Only the bed itself can tell", new DateOnly(2027, 4, 27), null, Citation.CommonPractice),
        []);

    public static BedPlan FullBed(string id)
    {
        var bed = Bed(id, [Reading(Analyte.P, Amount.Below(5m), Extractant.Mehlich3), Reading(Analyte.K, Amount.Measured(174.6m), Extractant.Mehlich3, ReportingUnit.PoundsPerAcre), Reading(Analyte.Ph, Amount.Measured(5.6m), null, ReportingUnit.PhUnits), Reading(Analyte.B, Amount.Above(2m), Extractant.HotWater)]);
        var need = new BedNeed(
            [
                new NutrientNeed(PlantNutrient.N, 0, "invented-cabbage", Range(100, 150), null, null, "invented-rates", null, null,
                    [new RateSplit("invented-cabbage", PlantNutrient.N, 1, Range(50, 50), "before planting", RatePage), new RateSplit("invented-cabbage", PlantNutrient.N, 2, null, "three weeks later", RatePage)], null, [], RatePage),
                new NutrientNeed(PlantNutrient.P2O5, 0, "invented-cabbage", Range(112.5, 112.5), "Very low", Standing.Below, "invented-rates", "invented-guide", MassPerArea.FromPoundsPerAcre(31.5), [], "irrigated", ["80 lb/acre on bare ground"], RatePage),
                new NutrientNeed(PlantNutrient.B, 0, "invented-cabbage", Range(1, 2), "Deficient", Standing.Below, "invented-rates", "invented-guide", null, [], null, [], RatePage),
            ],
            [new NutrientCredit(PlantNutrient.N, "clover turned under", MassPerArea.FromPoundsPerAcre(-4), MassPerArea.FromPoundsPerAcre(20), "over six weeks", RatePage)],
            [("/crops/0", new Refusal("no-rate-pair", "No rate table for potash may be read with this guide", "Choose the guide invented-neighbour"))],
            [new Assumption("invented-once", "Phosphate is given once per soil test", Citation.OurJudgement)]);
        var sheet = new WorkingSheet();
        sheet.Section($"Bed {id}: phosphate");
        OxideConversions.PhosphorusToPhosphate.Of(Rate<P>.FromPoundsPerAcre(13.75), sheet, Origin.From(RatePage));
        sheet.LookUp("rating", "P on the scale", "P < 15 mg/kg: Very low", [new WorkingInput("P", "soil test", null, "< 5", "mg/kg", Origin.Given("line 2"))], "Very low", GuidePage);
        IReadOnlyList<Rating> ratings = [.. bed.SoilTest.Readings.Select(r => Guide.Rate(bed.SoilTest, r, default).Value)];
        return new BedPlan(
            bed,
            BedState.Partly,
            "Spread 5 lb 8 oz of meal and lime in 2 doses; potash has no answer",
            ratings,
            need,
            Lime(bed),
            [
                new MaterialApplication(Meal, 0, MassPerArea.FromPoundsPerAcre(958.32), Mass.FromPounds(5.5), new VolumeMeasure(11.3, "cup", MaterialPage), new Money(12.1m, "USD"), "worked in a week before planting", new DateOnly(2027, 4, 20), "nitrogen and phosphate for Cabbage"),
                new MaterialApplication(Dust, 0, MassPerArea.FromPoundsPerAcre(10), Mass.FromOunces(0.92), null, null, "with the meal", null, "sulfur for Cabbage"),
            ],
            [
                new NutrientBalance(Nutrient.AvailableN, MassPerArea.FromPoundsPerAcre(104), MassPerArea.FromPoundsPerAcre(150), "the high end of the advised range", MassPerArea.FromPoundsPerAcre(104), MassPerArea.FromPoundsPerAcre(121.6)),
                new NutrientBalance(Nutrient.Mg, null, null, null, MassPerArea.FromPoundsPerAcre(12), MassPerArea.FromPoundsPerAcre(12)),
            ],
            [new Shortfall(Nutrient.AvailableP2O5, null, MassPerArea.FromPoundsPerAcre(8.4), false, "invented bone meal, about 60 lb/acre")],
            CoverCrops(),
            [
                new Finding("invented-pass", "XX-ORG", "9.2", FindingState.Pass, "All materials are on the list", null, false, RulePage),
                new Finding("invented-act", "XX-ORG", "9.3", FindingState.Act, "Raw manure 100 days before harvest: 120 days are asked for", "spreading date", true, RulePage),
            ],
            [new Caution("invented-dust", "Wear a dust mask and gloves", MaterialPage)],
            ["The sample was taken before 40 lb of compost"],
            need.Refused,
            [new Assumption("invented-price", "The price of lime is not known and not counted", Citation.OurJudgement)],
            new Money(12.1m, "USD"),
            sheet.Lines)
        {
            Certainties = Sure(ratings),
            Cations = Answer<CationBalance>.Given(Exchange),
        };
    }

    public static BedPlan QuietBed(string id)
    {
        var bed = Bed(id, [Reading(Analyte.P, Amount.Measured(44m), Extractant.Mehlich3)]);
        return new BedPlan(bed, BedState.Planned, "Nothing to spread: 44 mg/kg is enough", [Guide.Rate(bed.SoilTest, bed.SoilTest.Readings[0], default).Value], Nothing, null, [], [], [], null, [], [], [], [], [], null, []);
    }

    public static BedPlan RefusedBed(string id) =>
        new(Bed(id, []), BedState.Refused, "Not planned", [], Nothing, null, [], [], [], null, [], [], [], [("/soilTest", new Refusal("not-reported", "The test holds no reading", "Send the sample again"))], [], null, []);

    public static RatingScale Scale(Analyte analyte, Extractant? extractant, ReportingUnit unit, int? decimals, params (string Name, Standing Standing, decimal? Lower, decimal? Upper)[] classes) => new(
        analyte, new ScaleMethod(extractant, ScaleDetection.Any, null), unit, decimals,
        [.. classes.Select(c => new RatingClass(c.Name, c.Standing, c.Standing == Standing.Stop, c.Lower, true, c.Upper, decimals is not null, 0, 0, GuidePage))]);

    public static Reading Reading(Analyte analyte, Amount amount, Extractant? extractant, ReportingUnit unit = ReportingUnit.MilligramsPerKilogram) =>
        new(analyte, amount, unit, extractant is { } e ? Method.Extracted(e) : Method.By(null), "line 2");

    // Boron has no spread here, so that a report also shows a class without one.
    private static Dictionary<Rating, Answer<RatingCertainty>> Sure(IReadOnlyList<Rating> ratings) => new(
        ratings.Where(r => r.Analyte != Analyte.B).Select(r => KeyValuePair.Create(r, RatingCertainties.Of(r, r.Analyte == Analyte.Ph ? OfPh : Relative))),
        ReferenceEqualityComparer.Instance);

    private static ResultSpread Relative { get; } = new(true, CoefficientOfVariation.FromPercent(12), default, null, [new Assumption("invented-spread", "Invented composites of one field differ by 12 %", MaterialPage)]);

    private static ResultSpread OfPh { get; } = new(false, default, PhSpread.FromPhUnits(0.1), null, [new Assumption("invented-spread", "Invented composites of one field differ by 0.1 in pH", MaterialPage)]);

    private static CationBalance Exchange { get; } = new(
        new MilliequivalentWeights("invented-weights", "Invented weights", ReportingUnit.MilligramsPerKilogram, 200m, 120m, 390m, 230m, MaterialPage),
        "meq/100g",
        [new CationShare(Analyte.Ca, 6, Saturation.FromPercent(60)), new CationShare(Analyte.Mg, 1.5, Saturation.FromPercent(15)), new CationShare(Analyte.K, 0.5, Saturation.FromPercent(5))],
        new AcidityShare(2, Saturation.FromPercent(20), "the invented buffer", RatePage),
        8,
        10,
        Saturation.FromPercent(80),
        4,
        [new ReferenceSaturation(Extractant.Mehlich3, Analyte.Ca, 50, 80, GuidePage)],
        [new CationWarning("invented-extreme", "Magnesium is nearly as much as calcium", RulePage)],
        [new RatioTrial("invented-trial", "An invented trial found no gain from chasing ratios", RulePage)],
        [new Assumption("invented-salts", "Salts were not measured", Citation.CommonPractice)]);

    private static BedNeed Nothing { get; } = new([], [], [], []);

    private static OfferedMaterial Meal { get; } = Offered("invented-meal", "Invented seed meal", new Money(4.4m, "USD"), (Nutrient.AvailableN, 0.06), (Nutrient.AvailableP2O5, 0.02));

    private static OfferedMaterial Dust { get; } = Offered("invented-dust", "Invented sulfur dust", null, (Nutrient.S, 0.9));

    private static OfferedMaterial Stone { get; } = Offered("invented-stone", "Invented limestone", null, (Nutrient.CalciumCarbonate, 0.95), (Nutrient.Ca, 0.36));

    private static OfferedMaterial Offered(string id, string name, Money? price, params (Nutrient Nutrient, double Share)[] shares)
    {
        var planned = shares.ToDictionary(s => s.Nutrient, s => s.Share);
        var analysis = new MaterialAnalysis(planned, planned, shares.ToDictionary(s => s.Nutrient, _ => (IReadOnlyList<Citation>)[MaterialPage]), [new Assumption("invented-moisture", $"{name} holds 10 % water", Citation.CommonPractice)]);
        return new OfferedMaterial(
            new Material(id, name, "plant-meal", "as-sold", ManureKind.None, OrganicStatus.Allowed, "9.2", true, [], [], [], MaterialPage, null),
            analysis, price, null, true, MassPerArea.FromPoundsPerAcre(2000), 14);
    }

    private static Bed Bed(string id, IReadOnlyList<Reading> readings) => new(
        id,
        Area.FromSquareFeet(250),
        SpreadBasis.BedTop,
        new SoilTest("S-" + id, new DateOnly(2026, 10, 5), "Invented laboratory", null, SoilGroup.Loam, null, null, readings, []),
        "field",
        [new Planting(new Crop("invented-cabbage", "Cabbage", null, "Brassicaceae", "head", SoilContact.Contact, null, false, [], [], GuidePage), new DateOnly(2027, 5, 4), null, null, null, null)],
        [],
        [],
        null,
        null,
        "30 in × 100 ft = 250 sq ft",
        [new Assumption("bed-top", "Only the bed top is spread", Citation.OurJudgement)]);

    private static LimePlan Lime(Bed bed)
    {
        var requirement = new LimeRequirement("invented-buffer", new LimeAmount.NeutralisingValue(Rate<CalciumCarbonate>.FromPoundsPerAcre(4000)), 2m, "ton/acre", "calcium carbonate equivalent", Length.FromInches(8), new TargetPh(6.5m, "invented-cabbage", 6.2m, GuidePage), 5.6m, [], RatePage);
        var rate = MassPerArea.FromPoundsPerAcre(4210.53);
        LimeDose Dose(double part, int months) => new(rate * part, (rate * part).On(bed.Area), months, months, new DateOnly(2026, 11, 2).AddMonths(months));
        var choice = new LimeChoice(
            Stone,
            new StoneRate(rate, null, "Rate × 100 / 95 %.", RatePage, []),
            rate,
            1,
            rate.On(bed.Area),
            new LimeDoses([Dose(0.475, 0), Dose(0.525, 6)], null, "Split into 2 doses, six months apart.", RatePage),
            new VolumeMeasure(4, "gal", MaterialPage),
            null,
            null,
            ["Magnesium is at target, so a stone without it will do."],
            NutrientVector.Zero);
        return new LimePlan(requirement, [choice], choice, new LimeTiming(6, 12, new DateOnly(2028, 5, 2), "Lime takes 6 to 12 months to act. Test again from 2028-05-02.", RatePage), null);
    }

    private static CoverCropSelection CoverCrops()
    {
        var days = new CoverCropValue("days-to-flower", null, 30, 40, "days", null, MaterialPage, null);
        var seed = new CoverCropValue("seed-rate", 60, null, null, "lb/acre", null, MaterialPage, null);
        var wait = new PlantBack(14, [new PlantBackRule("invented", "settling", [], [], "any", 14, null, true, "two invented weeks", MaterialPage)]);
        var window = new CoverWindow(
            new DateOnly(2027, 8, 1), new DateOnly(2027, 8, 12), new DateOnly(2027, 8, 31), new DateOnly(2027, 8, 31), new DateOnly(2027, 9, 11), new DateOnly(2027, 9, 25), WinterFate.NoWinter, null, days, days, wait, null);
        var stand = CoverCropFormulas.Stand(MassPerArea.FromPoundsPerAcre(2000), MassShare.FromPercent(2));
        var numbers = new CoverCropNumbers(
            new CoverCropRange(MassPerArea.FromPoundsPerAcre(2000), MassPerArea.FromPoundsPerAcre(3000), "invented", MaterialPage), null,
            [new StageNitrogen("flowering", MassShare.FromPercent(2), MassShare.FromPercent(2), stand, stand, false, "invented", MaterialPage)], null, null, null, []);
        var choices = Enumerable.Range(1, 4).Select(i => new CoverCropChoice(
            CoverCrop($"Invented cover {i}"),
            5 - i,
            [new CoverCropReason("cover", $"Covers the ground in {i + 2} weeks", 4 - i, 1, MaterialPage), new CoverCropReason("family", "Same family as nothing here", 0.5, 2, Citation.OurJudgement)],
            window, numbers, Mass.FromOunces(5.5), seed, new Cited<string>("Dry matter 2000 to 3000 lb/acre", MaterialPage),
            new Cited<string>("About 12 lb/acre P2O5 is taken up and handed back: moved, not added", MaterialPage), null)).ToList();
        return new CoverCropSelection(
            new Gap(new DateOnly(2027, 8, 1), new DateOnly(2027, 9, 30)), choices,
            [new CoverCropExclusion("invented-slow-cover", [new CoverCropReason("days", "It needs 90 days; the gap has 60", 0, 1, MaterialPage)])],
            ["cover", "weeds"], CoverCropWeights.Standard, null, null, []);
    }

    private static CoverCrop CoverCrop(string name) => new(name.ToLowerInvariant().Replace(' ', '-'), name, "Inventa ficta", "Fictaceae", "annual", "warm", [], MaterialPage);

    private static RateRange Range(double low, double high) => new(MassPerArea.FromPoundsPerAcre(low), MassPerArea.FromPoundsPerAcre(high));
}
