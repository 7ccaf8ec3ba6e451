using BenchmarkDotNet.Attributes;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Planning;
using SoilAdvisor.ReferenceTables;
using UnitsNet;

namespace SoilAdvisor.Benchmarks;

/// <summary>
/// Whole plans from soil test to spreading list, on invented soil. Aim: one bed under 2 milliseconds after the first. The baseline is one bed.
/// </summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private static readonly string[] CropIds = ["cabbage", "broccoli", "carrot", "onion", "beet", "sweet-corn"];

    private Tables tables = null!;
    private FarmRequest oneBed = null!;
    private FarmRequest farm = null!;

    /// <summary>Loads the tables and the solver, so that neither is in the figures.</summary>
    [GlobalSetup]
    public void Load()
    {
        tables = Tables.Load(Tables.FindFolder(AppContext.BaseDirectory));
        oneBed = Request(1);
        farm = Request(24);
        _ = One_bed();
    }

    /// <summary>One bed, twelve priced materials.</summary>
    [Benchmark(Baseline = true)]
    public Answer<FarmPlan> One_bed() => FarmPlanner.Plan(oneBed, tables, CancellationToken.None);

    /// <summary>24 beds on three soils.</summary>
    [Benchmark]
    public Answer<FarmPlan> Farm_of_24_beds() => FarmPlanner.Plan(farm, tables, CancellationToken.None);

    /// <summary>The same with every line of working.</summary>
    [Benchmark]
    public Answer<FarmPlan> Farm_of_24_beds_with_working() => FarmPlanner.Plan(farm with { WithWorking = true }, tables, CancellationToken.None);

    private FarmRequest Request(int beds) => new(
        "Benchmark farm (invented)",
        new DateOnly(2026, 11, 24),
        tables.Guides["delaware-vegetables"],
        "US-DE",
        [.. Enumerable.Range(0, beds).Select(Bed)],
        [
            .. new (string Id, decimal PricePerKilogram)[]
            {
                ("feather-meal", 2.1m), ("blood-meal", 3.2m), ("alfalfa-meal", 1.1m), ("soybean-meal", 1.3m), ("fish-meal", 2.7m), ("bone-meal-steamed", 2.0m),
                ("poultry-pellet", 0.8m), ("potassium-sulfate", 2.5m), ("langbeinite", 1.7m), ("calcitic-lime", 0.4m), ("dolomitic-lime", 0.4m), ("leaf-compost", 0.08m),
            }.Select(m => new MaterialOffer(tables.Materials[m.Id], null, new Money(m.PricePerKilogram, "USD"), null)),
        ],
        "USD",
        null,
        null,
        false);

    private Bed Bed(int number)
    {
        var crop = tables.Crops[CropIds[number % CropIds.Length]];
        var (phosphorus, ph, buffer) = (number % 3) switch { 0 => (18m, 6.7m, 6.6m), 1 => (34m, 5.6m, 6.2m), _ => (128m, 6.6m, 6.6m) };
        var test = new SoilTest(
            $"soil {number % 3}",
            new DateOnly(2026, 10, 20),
            null,
            null,
            SoilGroup.Loam,
            null,
            null,
            [
                Reading(Analyte.P, phosphorus, ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3, Detection.Icp)),
                Reading(Analyte.K, 120m, ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3, Detection.Icp)),
                Reading(Analyte.Mg, 90m, ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3, Detection.Icp)),
                Reading(Analyte.Ph, ph, ReportingUnit.PhUnits, Method.By(Procedure.PhWater11)),
                Reading(Analyte.BufferPh, buffer, ReportingUnit.PhUnits, Method.By(Procedure.BufferMehlich)),
            ],
            []);
        return new Bed(
            $"bed {number}",
            Area.FromSquareFeet(250),
            SpreadBasis.BedTop,
            test,
            "field",
            [new Planting(crop, new DateOnly(2027, 4, 15), new DateOnly(2027, 7, 1), new DateOnly(2027, 8, 1), null, null)],
            [],
            [],
            null,
            null,
            "250 sq ft",
            []);
    }

    private static Reading Reading(Analyte analyte, decimal value, ReportingUnit unit, Method method) => new(analyte, Amount.Measured(value), unit, method, "benchmark");
}
