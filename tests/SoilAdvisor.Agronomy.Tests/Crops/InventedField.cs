using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Crops;

/// <summary>An invented guide, rate tables and crops for tests of the mechanism. Their numbers are round and come from nowhere.</summary>
internal static class InventedField
{
    private static readonly Citation Source = new("invented", null, Evidence.Ours);

    /// <summary>P Low under 25, Medium to 50, Optimum to 100, Excessive above; K and Mg Low under 100, Enough from 100 on.</summary>
    public static readonly Guide Guide = new("invented", "Invented guide", "Nobody", ["XX-YY"], "vegetables", "vegetables", Source, null,
    [
        Scale(Analyte.P, Class("Low", Standing.Below, null, 25), Class("Medium", Standing.Below, 25, 50), Class("Optimum", Standing.Target, 50, 100), Class("Excessive", Standing.Stop, 100, null)),
        Scale(Analyte.K, Class("Low", Standing.Below, null, 100), Class("Enough", Standing.Target, 100, null)),
        Scale(Analyte.Mg, Class("Low", Standing.Below, null, 100), Class("Enough", Standing.Target, 100, null)),
    ]);

    public static readonly Crop Cabbage = Crop("cabbage", [Value("typical-yield", 400, "cwt/acre")], [Removal("lb/ton", 1.5m, 6.5m)]);

    public static readonly Crop Carrot = Crop("carrot", [], [Removal("kg/t", 1m, 5m)]);

    public static readonly Crop Lettuce = Crop("lettuce", [], []);

    public static readonly RateTable ClassTable = new(
        "invented-classes", "Invented class table", "Nobody", ["XX-YY"], RateTableKind.ClassTable, "broadcast-acre",
        [new RatePair("invented", new Dictionary<string, string> { ["Low"] = "low", ["Medium"] = "medium", ["Optimum"] = "high", ["Excessive"] = "very-high", ["Enough"] = "high" }, Source, "paired by order")],
        [
            Rate("cabbage", PlantNutrient.N, "all", 100, 150), Rate("cabbage", PlantNutrient.N, "all", 60, null, "late crop"),
            Rate("cabbage", PlantNutrient.P2O5, "low", 200), Rate("cabbage", PlantNutrient.P2O5, "medium", 100), Rate("cabbage", PlantNutrient.P2O5, "high", 50), Rate("cabbage", PlantNutrient.P2O5, "very-high", 0),
            Rate("cabbage", PlantNutrient.K2O, "low", 150), Rate("cabbage", PlantNutrient.K2O, "high", 40),
            Rate("cabbage", PlantNutrient.Mg, "all", 25, null, "soil magnesium low"), Rate("cabbage", PlantNutrient.S, "all", 20, 45), Rate("cabbage", PlantNutrient.B, "all", 1, 2, "soil boron low"),
            Rate("carrot", PlantNutrient.N, "all", 50), Rate("carrot", PlantNutrient.P2O5, "low", 120), Rate("carrot", PlantNutrient.P2O5, "medium", 110), Rate("carrot", PlantNutrient.K2O, "low", 180), Rate("carrot", PlantNutrient.K2O, "high", 40),
        ],
        [new RateSplit("cabbage", PlantNutrient.N, 2, null, "four weeks later", Source), new RateSplit("cabbage", PlantNutrient.N, 1, null, "before planting", Source)],
        [],
        [
            Credit("previous-crop", "soybean", 30, 40, "not on sandy soil"), Credit("previous-crop", "alfalfa", 120, null, "good stand"), Credit("previous-crop", "alfalfa", 40, null, "poor stand"),
            Credit("cover-crop", "vetch", 50, 100, null), Credit("cover-crop", "legume", 100, null, "dense stand"), Credit("previous-crop", "wheat", -10, 0, null),
        ],
        Source, null);

    public static readonly RateTable BuildUp = new(
        "invented-build-up", "Invented build-up rule", "Nobody", ["XX-ZZ"], RateTableKind.BuildUpAndMaintenance, "broadcast-acre",
        [new RatePair("invented", new Dictionary<string, string>(), Source, null)], [], [],
        [
            Parameter("p-critical", 40), Parameter("p-maintenance-upper", 70), Parameter("p-build-up-per-year", 5), Parameter("k-critical-base", 75), Parameter("k-critical-per-cec", 2.5m),
            Parameter("k-maintenance-width", 20), Parameter("k-build-up-base", 1), Parameter("k-build-up-per-cec", 0.05m), Parameter("k-build-up-constant", 20),
        ],
        [], Source, null);

    public static readonly RateTable Elsewhere = ClassTable with { Id = "elsewhere", Title = "Table of elsewhere", Regions = ["QQ-RR"], Pairs = [], Rates = [Rate("lettuce", PlantNutrient.N, "all", 70)], Credits = [] };

    public static readonly IReadOnlyDictionary<string, CoverCrop> CoverCrops = new[]
    {
        new CoverCrop("vetch", "Vetch", null, "Fabaceae", "annual", "cool", [], Source), new CoverCrop("clover", "Clover", null, "Fabaceae", "annual", "cool", [], Source), new CoverCrop("rye", "Rye", null, "Poaceae", "annual", "cool", [], Source),
    }.ToDictionary(c => c.Id);

    public static SoilTest Test(decimal? p = null, decimal? k = null, decimal? mg = null, decimal? cec = null, SoilGroup? soil = null)
    {
        var readings = new List<Reading>();
        foreach (var (analyte, value) in new[] { (Analyte.P, p), (Analyte.K, k), (Analyte.Mg, mg) })
        {
            if (value is { } number)
            {
                readings.Add(new Reading(analyte, Amount.Measured(number), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3, Detection.Icp), $"{analyte} line"));
            }
        }

        if (cec is { } capacity)
        {
            readings.Add(new Reading(Analyte.CationExchangeCapacity, Amount.Measured(capacity), ReportingUnit.MilliequivalentsPer100Grams, Method.By(null), "cec line"));
        }

        return new SoilTest("s1", null, null, null, soil, null, null, readings, []);
    }

    public static BedNeed NeedOf(SoilTest test, RateTable[] tables, Planting[] plantings, PreviousStand[]? previous = null, WorkingSheet? working = null) =>
        NeedCalculation.For(
            test,
            Guide,
            tables.ToDictionary(t => t.Id),
            [.. test.Readings.Select(r => Guide.Rate(test, r, default)).Where(r => r.IsGiven).Select(r => r.Value)],
            plantings,
            previous ?? [],
            CoverCrops,
            working);

    public static Planting Plant(Crop crop, decimal? yield = null, string unit = "short-ton/acre") =>
        new(crop, null, null, null, yield is { } value ? new ExpectedYield(value, unit) : null, null);

    public static NutrientNeed Only(this BedNeed need, PlantNutrient nutrient) => Assert.Single(need.Needs, n => n.Nutrient == nutrient);

    public static RateRow Rate(string crop, PlantNutrient nutrient, string @class, decimal low, decimal? high = null, string? condition = null, SoilGroup[]? soils = null) => new(
        crop, nutrient, @class, new RateRange(MassPerArea.FromPoundsPerAcre((double)low), MassPerArea.FromPoundsPerAcre((double)(high ?? low))), low, high, "lb/acre", soils ?? [], condition, Source, null);

    private static RatingScale Scale(Analyte analyte, params RatingClass[] classes) =>
        new(analyte, new ScaleMethod(Extractant.Mehlich3, ScaleDetection.Any, null), ReportingUnit.MilligramsPerKilogram, null, classes);

    private static RatingClass Class(string name, Standing standing, decimal? lower, decimal? upper) => new(name, standing, true, lower, true, upper, false, 0, 0, Source);

    private static Crop Crop(string id, CropValue[] values, Removal[] removals) =>
        new(id, id, null, "Family", "head", SoilContact.Contact, null, false, values, removals, Source);

    private static CropValue Value(string property, decimal value, string unit) => new(property, value, null, null, unit, Source, null);

    private static Removal Removal(string unit, decimal p2o5, decimal k2o) => new("harvested", "fresh weight", unit, null, p2o5, k2o, null, null, null, Source, null);

    private static RateParameter Parameter(string symbol, decimal value) => new(symbol, symbol, value, "", Source);

    private static CreditRow Credit(string kind, string what, decimal low, decimal? high, string? condition) => new(kind, what, low, high, "lb/acre", "next crop", condition, Source, null);
}
