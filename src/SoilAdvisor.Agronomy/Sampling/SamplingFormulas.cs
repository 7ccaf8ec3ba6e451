using MathNet.Numerics.Distributions;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>How many cores, how near they come, and how far two results must lie apart.</summary>
public static class SamplingFormulas
{
    private const string Textbook = "A textbook equation; no publication that was read prints a worked example. Checked against printed tables of the normal and the t distribution.";

    private static readonly Symbol ConfidenceSymbol = new("C", "confidence", "%", (double)Confidence.LowestPercent, (double)Confidence.HighestPercent);

    private static readonly Symbol ScoreSymbol = new("z", "standard score of the confidence, both sides", "", 0.1, 4);

    private static readonly Symbol SpreadSymbol = new("CV", "spread from core to core", "%", 0, 500);

    private static readonly Symbol PrecisionSymbol = new("E", "wanted precision, plus or minus", "%", 1, 100);

    /// <summary>How many standard deviations on both sides hold the share of the confidence.</summary>
    public static Formula<Confidence, Coefficient> StandardScore { get; } = new(
        "standard-score",
        "Standard score of a confidence",
        "z = Φ⁻¹(0.5 + C / 200)",
        Citation.CommonPractice,
        [new(ConfidenceSymbol, x => x.Percent)],
        new(new Symbol("z", "standard score", ""), y => y.Value),
        v => Confidence.FromPercent(v[0]),
        x => new Coefficient(Normal.InvCDF(0, 1, 0.5 + (x.Percent / 200))),
        Textbook);

    /// <summary>Cores for a wanted precision where the field's spread is known.</summary>
    public static Formula<(Coefficient Score, CoefficientOfVariation Field, Precision Wanted), Coefficient> CoresForPrecision { get; } = new(
        "cores-for-precision",
        "Cores for a wanted precision",
        "n = (z × CV / E)², rounded up",
        Citation.CommonPractice,
        [new(ScoreSymbol, x => x.Score.Value), new(SpreadSymbol, x => x.Field.Percent), new(PrecisionSymbol, x => x.Wanted.Percent)],
        new(new Symbol("n", "cores", ""), y => y.Value),
        v => (new(v[0]), CoefficientOfVariation.FromPercent(v[1]), Precision.FromPercent(v[2])),
        x => new Coefficient(Math.Max(1, RoundedUp(Math.Pow(x.Score.Value * x.Field.Percent / x.Wanted.Percent, 2)))),
        Textbook);

    /// <summary>
    /// Cores for a wanted precision where the spread itself is only known from about as many cores: Student's t in place of the normal score,
    /// with one degree of freedom fewer than cores, until the number holds.
    /// </summary>
    public static Formula<(Confidence Confidence, CoefficientOfVariation Field, Precision Wanted), Coefficient> CoresForPrecisionByStudent { get; } = new(
        "cores-for-precision-student",
        "Cores for a wanted precision, few cores",
        "n = the smallest number from 2 with n ≥ (t(C, n − 1) × CV / E)²",
        Citation.CommonPractice,
        [new(ConfidenceSymbol, x => x.Confidence.Percent), new(SpreadSymbol, x => x.Field.Percent), new(PrecisionSymbol, x => x.Wanted.Percent)],
        new(new Symbol("n", "cores", ""), y => y.Value),
        v => (Confidence.FromPercent(v[0]), CoefficientOfVariation.FromPercent(v[1]), Precision.FromPercent(v[2])),
        x => new Coefficient(ByStudent(x.Confidence, x.Field.Percent / x.Wanted.Percent)),
        Textbook);

    /// <summary>How near the mean of so many cores comes.</summary>
    public static Formula<(Coefficient Score, CoefficientOfVariation Field, Coefficient Cores), Precision> PrecisionOfCores { get; } = new(
        "precision-of-cores",
        "Precision of a number of cores",
        "E = z × CV / √n",
        Citation.CommonPractice,
        [new(ScoreSymbol, x => x.Score.Value), new(SpreadSymbol, x => x.Field.Percent), new(new Symbol("n", "cores", "", 1, 1000), x => x.Cores.Value)],
        new(new Symbol("E", "precision, plus or minus", "%"), y => y.Percent),
        v => (new(v[0]), CoefficientOfVariation.FromPercent(v[1]), new(v[2])),
        x => Precision.FromPercent(x.Score.Value * x.Field.Percent / Math.Sqrt(x.Cores.Value)),
        Textbook);

    /// <summary>Standard deviation of a result from its spread.</summary>
    public static Formula<(CoefficientOfVariation Spread, Coefficient Result), Coefficient> DeviationOfResult { get; } = new(
        "deviation-of-result",
        "Standard deviation of a result",
        "s = CV / 100 × x",
        Citation.OurArithmetic,
        [new(new Symbol("CV", "spread of the result", "%", 0, 500), x => x.Spread.Percent), new(new Symbol("x", "the result", "", 0), x => x.Result.Value)],
        new(new Symbol("s", "standard deviation, in the unit of the result", ""), y => y.Value),
        v => (CoefficientOfVariation.FromPercent(v[0]), new(v[1])),
        x => new Coefficient(x.Spread.Fraction * x.Result.Value),
        "The definition of the coefficient of variation.");

    /// <summary>Standard deviation of the difference of two independent results.</summary>
    public static Formula<(Coefficient First, Coefficient Second), Coefficient> DeviationOfDifference { get; } = new(
        "deviation-of-difference",
        "Standard deviation of the difference of two results",
        "s = √(s1² + s2²)",
        Citation.CommonPractice,
        [new(new Symbol("s1", "standard deviation of the first", "", 0), x => x.First.Value), new(new Symbol("s2", "standard deviation of the second", "", 0), x => x.Second.Value)],
        new(new Symbol("s", "standard deviation of the difference", ""), y => y.Value),
        v => (new(v[0]), new(v[1])),
        x => new Coefficient(Math.Sqrt((x.First.Value * x.First.Value) + (x.Second.Value * x.Second.Value))),
        Textbook);

    /// <summary>The smallest difference that chance does not explain.</summary>
    public static Formula<(Coefficient Score, Coefficient Deviation), Coefficient> SmallestProvableChange { get; } = new(
        "smallest-provable-change",
        "Smallest change that can be proved",
        "D = z × s",
        Citation.CommonPractice,
        [new(ScoreSymbol, x => x.Score.Value), new(new Symbol("s", "standard deviation of the difference", "", 0), x => x.Deviation.Value)],
        new(new Symbol("D", "smallest provable change, in the unit of the results", ""), y => y.Value),
        v => (new(v[0]), new(v[1])),
        x => new Coefficient(x.Score.Value * x.Deviation.Value),
        Textbook);

    /// <summary>The same in percent, for two results with one spread: 2.77 times the spread at 95 %.</summary>
    public static Formula<(Coefficient Score, CoefficientOfVariation Spread), Precision> SmallestProvableShare { get; } = new(
        "smallest-provable-share",
        "Smallest change that can be proved, in percent",
        "D = z × √2 × CV",
        Citation.CommonPractice,
        [new(ScoreSymbol, x => x.Score.Value), new(new Symbol("CV", "spread of either result", "%", 0, 500), x => x.Spread.Percent)],
        new(new Symbol("D", "smallest provable change", "%"), y => y.Percent),
        v => (new(v[0]), CoefficientOfVariation.FromPercent(v[1])),
        x => Precision.FromPercent(x.Score.Value * Math.Sqrt(2) * x.Spread.Percent),
        Textbook);

    // A square that is a whole number but for the last bits of the arithmetic is that number.
    private static double RoundedUp(double value) => Math.Ceiling(value - 1e-9);

    private static double ByStudent(Confidence confidence, double ratio)
    {
        var tail = 0.5 + (confidence.Percent / 200);
        var cores = Math.Max(2, RoundedUp(Math.Pow(Normal.InvCDF(0, 1, tail) * ratio, 2)));
        while (Math.Pow(StudentT.InvCDF(0, 1, cores - 1, tail) * ratio, 2) - 1e-9 > cores)
        {
            cores++;
        }

        return cores;
    }
}
