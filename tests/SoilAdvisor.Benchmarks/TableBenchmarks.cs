using BenchmarkDotNet.Attributes;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Benchmarks;

/// <summary>Reading and checking all reference tables, as every start does.</summary>
[MemoryDiagnoser]
public class TableBenchmarks
{
    private string folder = "";

    /// <summary>Finds the tables.</summary>
    [GlobalSetup]
    public void Find() => folder = Tables.FindFolder(AppContext.BaseDirectory);

    /// <summary>Reads, checks and builds everything.</summary>
    [Benchmark(Baseline = true)]
    public Tables Load_and_check_all_tables() => Tables.Load(folder);
}
