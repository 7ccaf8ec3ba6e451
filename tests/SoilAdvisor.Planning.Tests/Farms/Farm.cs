using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables;
using UnitsNet;

namespace SoilAdvisor.Planning.Tests.Farms;

/// <summary>An invented farm on the real reference tables: loam, sampled 2026-09-15, planned for 2026-11-24.</summary>
internal static class Farm
{
    private static readonly Lazy<Tables> Loaded = new(() => ReferenceTables.Tables.Load(ReferenceTables.Tables.FindFolder(AppContext.BaseDirectory)));

    public static Tables Tables => Loaded.Value;

    public static DateOnly Date => new(2026, 11, 24);

    public static SoilTest Test(decimal p, decimal k, decimal ph = 6.5m, decimal? buffer = null, decimal mg = 150, string id = "s1", Extractant extractant = Extractant.Mehlich3, DateOnly? sampled = null, bool? freeLime = null) => new(
        id,
        sampled ?? new DateOnly(2026, 9, 15),
        null,
        null,
        SoilGroup.Loam,
        freeLime,
        null,
        [
            new Reading(Analyte.P, Amount.Measured(p), ReportingUnit.MilligramsPerKilogram, Method.Extracted(extractant, extractant is Extractant.Mehlich3 ? Detection.Icp : Detection.Colorimetric), "P"),
            new Reading(Analyte.K, Amount.Measured(k), ReportingUnit.MilligramsPerKilogram, Method.Extracted(extractant is Extractant.Mehlich3 ? extractant : Extractant.AmmoniumAcetate, Detection.Icp), "K"),
            new Reading(Analyte.Mg, Amount.Measured(mg), ReportingUnit.MilligramsPerKilogram, Method.Extracted(extractant is Extractant.Mehlich3 ? extractant : Extractant.AmmoniumAcetate, Detection.Icp), "Mg"),
            new Reading(Analyte.Ph, Amount.Measured(ph), ReportingUnit.PhUnits, Method.By(Procedure.PhWater11), "pH"),
            .. buffer is { } b ? [new Reading(Analyte.BufferPh, Amount.Measured(b), ReportingUnit.PhUnits, Method.By(Procedure.BufferMehlich), "bufferPh")] : Array.Empty<Reading>(),
        ],
        []);

    public static Bed Bed(string id, SoilTest test, params string[] crops) => new(
        id,
        Area.FromSquareFeet(250),
        SpreadBasis.BedTop,
        test,
        "field",
        [.. crops.Select((c, i) => new Planting(Tables.Crop(c).Value, new DateOnly(2027, 4 + (3 * i), 20), new DateOnly(2027, 6 + (3 * i), 25), null, null, null))],
        [],
        [],
        null,
        null,
        "30 in × 100 ft = 250 sq ft",
        []);

    public static MaterialOffer Offer(string id, decimal? pricePerPound = null, double? poundsOnHand = null) => new(
        Tables.Material(id).Value,
        null,
        pricePerPound is { } price ? new Money(price / 0.45359237m, "USD") : null,
        poundsOnHand is { } stock ? Mass.FromPounds(stock) : null);

    public static FarmRequest Request(IReadOnlyList<Bed> beds, params MaterialOffer[] materials) =>
        new("Invented farm", Date, null, "US-DE", beds, materials, null, null, null, false);

    public static FarmPlan Plan(FarmRequest request) => FarmPlanner.Plan(request, Tables, CancellationToken.None).Value;

    public static BedPlan PlanOne(Bed bed, params MaterialOffer[] materials) => Plan(Request([bed], materials)).Beds[0];
}
