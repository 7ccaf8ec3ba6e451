using BenchmarkDotNet.Attributes;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Benchmarks;

/// <summary>
/// A million rows of ten values each, every value to its class on a real scale: the method that each rating goes through against a bare loop over
/// doubles that does the same comparisons. Aim: at least half the speed of the loop, and nothing allocated. One operation is one row.
/// </summary>
[MemoryDiagnoser]
public class ClassBenchmarks
{
    private const int Rows = 1_000_000;
    private const int Columns = 10;

    private RatingScale[] scales = null!;
    private double[][] limits = null!;
    private ScaleValue[] values = null!;
    private double[] numbers = null!;

    /// <summary>Takes ten scales of vegetable guides and draws seeded values from nothing to one and a half times the last limit of each.</summary>
    [GlobalSetup]
    public void Draw()
    {
        var tables = Tables.Load(Tables.FindFolder(AppContext.BaseDirectory));
        scales =
        [
            .. new[] { "delaware-vegetables", "new-jersey-vegetables" }
                .SelectMany(id => tables.Guides[id].Scales)
                .Where(s => s.Method.Extractant == Extractant.Mehlich3 && s.Classes.Count >= 3)
                .Take(Columns),
        ];
        limits = [.. scales.Select(s => s.Classes.Select(c => c.Upper is { } upper ? (double)upper : double.PositiveInfinity).ToArray())];
        var random = new Random(20261125);
        values = new ScaleValue[Rows * Columns];
        numbers = new double[Rows * Columns];
        for (var i = 0; i < values.Length; i++)
        {
            var top = (double)scales[i % Columns].Classes[^1].Lower!.Value * 1.5;
            var printed = Math.Round((decimal)(random.NextDouble() * top), 1);
            values[i] = ScaleValue.From(printed);
            numbers[i] = (double)printed;
        }

        if (scales.Length != Columns)
        {
            throw new InvalidOperationException("The guides hold fewer scales than the benchmark needs.");
        }
    }

    /// <summary>The bare loop.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public int Plain_doubles()
    {
        var sum = 0;
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var value = numbers[(row * Columns) + column];
                var ends = limits[column];
                var index = 0;
                while (index < ends.Length - 1 && value >= ends[index])
                {
                    index++;
                }

                sum += index;
            }
        }

        return sum;
    }

    /// <summary>The method that every rating goes through.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public int Scale_index()
    {
        var sum = 0;
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                sum += scales[column].IndexOf(values[(row * Columns) + column], default);
            }
        }

        return sum;
    }
}
