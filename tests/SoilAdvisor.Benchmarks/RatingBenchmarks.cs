using BenchmarkDotNet.Attributes;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Benchmarks;

/// <summary>One phosphorus reading rated by one guide. Aim: under 10 microseconds. The baseline is the silent path in the guide's own unit.</summary>
[MemoryDiagnoser]
public class RatingBenchmarks
{
    private Guide sameUnit = null!;
    private Guide otherUnit = null!;
    private SoilTest test = null!;
    private Reading phosphorus = null!;

    /// <summary>Loads the tables.</summary>
    [GlobalSetup]
    public void Load()
    {
        var tables = Tables.Load(Tables.FindFolder(AppContext.BaseDirectory));
        (sameUnit, otherUnit) = (tables.Guides["delaware-vegetables"], tables.Guides["new-jersey-vegetables"]);
        phosphorus = new Reading(Analyte.P, Amount.Measured(24m), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3, Detection.Icp), "benchmark");
        test = new SoilTest("benchmark", null, null, null, null, null, null, [phosphorus], []);
    }

    /// <summary>mg/kg on a scale in mg/kg.</summary>
    [Benchmark(Baseline = true)]
    public Answer<Rating> Rate_in_the_guides_unit() => sameUnit.Rate(test, phosphorus, default);

    /// <summary>mg/kg on a scale in lb/acre.</summary>
    [Benchmark]
    public Answer<Rating> Rate_after_a_change_of_unit() => otherUnit.Rate(test, phosphorus, default);

    /// <summary>With the working written down.</summary>
    [Benchmark]
    public Answer<Rating> Rate_with_working() => sameUnit.Rate(test, phosphorus, default, new WorkingSheet());
}
