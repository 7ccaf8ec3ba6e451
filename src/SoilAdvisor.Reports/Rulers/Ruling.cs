using System.Globalization;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Rulers;

/// <summary>
/// How a ruler is divided between its ends: evenly, or by tens (each step multiplies) where its numbers span more than a decade.
/// </summary>
internal sealed class Ruling
{
    // Where the largest number is more than twelve times the smallest limit, even steps would crush the low classes.
    private const double Decade = 12;
    private const int SmallMarksAimed = 24;
    private const int RoundNumbersAimed = 5;

    private readonly double low;
    private readonly double high;

    private Ruling(double low, double high, bool byTens) => (this.low, this.high, IsByTens) = (low, high, byTens);

    /// <summary>True when each step multiplies.</summary>
    public bool IsByTens { get; }

    /// <summary>What the small marks stand for.</summary>
    /// <param name="unit">The scale's unit; empty for pH.</param>
    public string InWords(string unit) => IsByTens
        ? $"Ruled by tens: small marks at 1, 2, 3 to 9 of each ten{(unit.Length > 0 ? $", in {unit}" : "")}."
        : $"A small mark every {Figure.Calculator(Step(SmallMarksAimed), 3)} {unit}".TrimEnd() + ".";

    /// <summary>A ruling that holds these numbers.</summary>
    /// <param name="limits">The guide's limits.</param>
    /// <param name="values">Results and the ends of their whiskers.</param>
    /// <param name="isPh">True for a pH, which has no natural zero and is a logarithm already.</param>
    public static Ruling Holding(IReadOnlyCollection<double> limits, IReadOnlyCollection<double> values, bool isPh)
    {
        var most = limits.Concat(values).DefaultIfEmpty(1).Max();
        var least = limits.Concat(values).Where(v => v > 0).DefaultIfEmpty(most).Min();
        var leastLimit = limits.Where(v => v > 0).DefaultIfEmpty(most).Min();
        if (isPh)
        {
            var room = Math.Max(0.5, (most - least) / 3);
            return new Ruling(least - room, most + room, false);
        }

        return most > Decade * leastLimit
            ? new Ruling(Math.Max(least, leastLimit / 100) / 2, most * 1.6, true)
            : new Ruling(0, most > 0 ? Math.Max(most * 1.08, limits.DefaultIfEmpty(0).Max() * 1.3) : 1, false);
    }

    /// <summary>Place of a number from 0 to 1; what lies beyond an end stands at the end.</summary>
    public double PlaceOf(double number) => Math.Clamp(
        IsByTens ? Math.Log(Math.Max(number, low) / low) / Math.Log(high / low) : (number - low) / (high - low), 0, 1);

    /// <summary>Whether a number lies beyond the left end, as zero does on a ruler by tens.</summary>
    public bool IsBelow(double number) => number < low;

    /// <summary>Places of the small marks.</summary>
    public IEnumerable<double> SmallMarks()
    {
        if (!IsByTens)
        {
            return Multiples(Step(SmallMarksAimed)).Select(PlaceOf);
        }

        return Decades().SelectMany(ten => Enumerable.Range(1, 9).Select(i => i * ten)).Where(v => v > low && v < high).Select(PlaceOf);
    }

    /// <summary>Round numbers to print beside the limits.</summary>
    public IEnumerable<double> RoundNumbers() => IsByTens ? Decades().Where(v => v > low && v < high) : Multiples(Step(RoundNumbersAimed));

    private IEnumerable<double> Multiples(double step)
    {
        for (var k = (decimal)Math.Ceiling(low / step); k * (decimal)step < (decimal)high; k++)
        {
            yield return (double)(k * (decimal)step);
        }
    }

    private IEnumerable<double> Decades()
    {
        for (var power = (int)Math.Floor(Math.Log10(low)); Math.Pow(10, power) < high; power++)
        {
            yield return double.Parse($"1e{power.ToString(CultureInfo.InvariantCulture)}", CultureInfo.InvariantCulture);
        }
    }

    private double Step(int marks)
    {
        var least = (high - low) / marks;
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return (double)((decimal)power * ((least / power) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 }));
    }
}
