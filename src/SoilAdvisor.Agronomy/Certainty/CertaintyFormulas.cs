using MathNet.Numerics.Distributions;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>From the spread of a result to how likely the ground lies below a limit.</summary>
public static class CertaintyFormulas
{
    private const string NoExample = "No publication that was read prints a worked example; checked against printed tables of the normal distribution and a simulation.";

    /// <summary>Spread of one composite from the laboratory's share and the field's share. Independent shares add as squares.</summary>
    public static Formula<(CoefficientOfVariation Laboratory, CoefficientOfVariation Field, Coefficient Cores), CoefficientOfVariation> OfComposite { get; } = new(
        "spread-of-composite",
        "Spread of a composite of several cores",
        "CV = √(CVlab² + CVfield² / n)",
        Citation.CommonPractice,
        [
            new(new Symbol("CVlab", "spread of the laboratory's repeats", "%", 0, 500), x => x.Laboratory.Percent),
            new(new Symbol("CVfield", "spread from core to core in the field", "%", 0, 500), x => x.Field.Percent),
            new(new Symbol("n", "cores in the composite", "", 1, 1000), x => x.Cores.Value),
        ],
        new(new Symbol("CV", "spread of the composite's result", "%"), y => y.Percent),
        v => (CoefficientOfVariation.FromPercent(v[0]), CoefficientOfVariation.FromPercent(v[1]), new Coefficient(v[2])),
        x => CoefficientOfVariation.FromFraction(Math.Sqrt((x.Laboratory.Fraction * x.Laboratory.Fraction) + (x.Field.Fraction * x.Field.Fraction / x.Cores.Value))),
        NoExample);

    /// <summary>A standard deviation in the value's unit, in percent of the value.</summary>
    public static Formula<(Coefficient Deviation, Coefficient Result), CoefficientOfVariation> OfDeviation { get; } = new(
        "spread-in-percent",
        "Spread in percent of the result",
        "CV = min(100 × SD / x, 1000)",
        Citation.OurArithmetic,
        [
            new(new Symbol("SD", "standard deviation, in the unit of the result", "", 0), x => x.Deviation.Value),
            new(new Symbol("x", "the result", "", 1e-9), x => x.Result.Value),
        ],
        new(new Symbol("CV", "spread", "%"), y => y.Percent),
        v => (new Coefficient(v[0]), new Coefficient(v[1])),
        x => CoefficientOfVariation.FromFraction(Math.Min(x.Deviation.Value / x.Result.Value, CoefficientOfVariation.LargestPercent / 100d)),
        NoExample);

    /// <summary>
    /// How likely the true value lies below a limit, lognormal: the printed result is the median, and every value that prints the same is
    /// equally likely on the logarithmic scale.
    /// </summary>
    public static Formula<ResultNearLimit, Probability> BelowLimit { get; } = new(
        "probability-below-limit",
        "Probability that the true value lies below a limit",
        "P = mean of Φ((ln L − ln t) / s) for t from x − h to x + h, s = √ln(1 + (CV / 100)²)",
        Citation.OurJudgement,
        [
            new(new Symbol("x", "the result", "", 1e-9), x => x.Result.Value),
            new(new Symbol("h", "half of its last printed digit", "", 0), x => x.HalfStep.Value),
            new(new Symbol("L", "the limit", "", 0), x => x.Limit.Value),
            new(new Symbol("CV", "spread of the result", "%", 0, CoefficientOfVariation.LargestPercent), x => x.Spread.Value),
        ],
        new(new Symbol("P", "probability", ""), y => y.Fraction),
        v => new ResultNearLimit(new(v[0]), new(v[1]), new(v[2]), new(v[3])),
        x => Below(
            Math.Log(x.Result.Value - x.HalfStep.Value),
            Math.Log(x.Result.Value + x.HalfStep.Value),
            x.Limit.Value > 0 ? Math.Log(x.Limit.Value) : double.NegativeInfinity,
            CoefficientOfVariation.FromPercent(x.Spread.Value).OfLogarithm),
        NoExample);

    /// <summary>How likely the true pH lies below a limit, normal.</summary>
    public static Formula<ResultNearLimit, Probability> BelowPhLimit { get; } = new(
        "probability-below-ph-limit",
        "Probability that the true pH lies below a limit",
        "P = mean of Φ((L − t) / SD) for t from x − h to x + h",
        Citation.OurJudgement,
        [
            new(new Symbol("x", "the pH", "pH", 0, 14), x => x.Result.Value),
            new(new Symbol("h", "half of its last printed digit", "pH", 0, 1), x => x.HalfStep.Value),
            new(new Symbol("L", "the limit", "pH", 0, 14), x => x.Limit.Value),
            new(new Symbol("SD", "standard deviation", "pH", 0, 14), x => x.Spread.Value),
        ],
        new(new Symbol("P", "probability", ""), y => y.Fraction),
        v => new ResultNearLimit(new(v[0]), new(v[1]), new(v[2]), new(v[3])),
        x => Below(x.Result.Value - x.HalfStep.Value, x.Result.Value + x.HalfStep.Value, x.Limit.Value, x.Spread.Value),
        NoExample);

    /// <summary>
    /// Two results of one block as one: each weighs as the inverse of its variance on the logarithmic scale, which for results of one method
    /// with one spread is the geometric mean.
    /// </summary>
    public static Formula<(Coefficient First, Coefficient Second, CoefficientOfVariation FirstSpread, CoefficientOfVariation SecondSpread), Coefficient> PooledValue { get; } = new(
        "pooled-result",
        "Two results of one block as one",
        "x = exp((w1 × ln x1 + w2 × ln x2) / (w1 + w2)), w1 = 1 / ln(1 + (CV1 / 100)²), w2 with CV2",
        Citation.OurJudgement,
        [
            new(new Symbol("x1", "first result", "", 1e-9), x => x.First.Value),
            new(new Symbol("x2", "second result, same unit", "", 1e-9), x => x.Second.Value),
            new(new Symbol("CV1", "spread of the first", "%", 0.01, 500), x => x.FirstSpread.Percent),
            new(new Symbol("CV2", "spread of the second", "%", 0.01, 500), x => x.SecondSpread.Percent),
        ],
        new(new Symbol("x", "pooled result", ""), y => y.Value),
        v => (new(v[0]), new(v[1]), CoefficientOfVariation.FromPercent(v[2]), CoefficientOfVariation.FromPercent(v[3])),
        x => new Coefficient(Math.Exp(Weighted(Math.Log(x.First.Value), Math.Log(x.Second.Value), x.FirstSpread.OfLogarithm, x.SecondSpread.OfLogarithm))),
        NoExample);

    /// <summary>Spread of two pooled results.</summary>
    public static Formula<(CoefficientOfVariation First, CoefficientOfVariation Second), CoefficientOfVariation> PooledSpread { get; } = new(
        "pooled-spread",
        "Spread of two results pooled",
        "CV = 100 × √(exp(1 / (w1 + w2)) − 1), w1 = 1 / ln(1 + (CV1 / 100)²), w2 with CV2",
        Citation.OurJudgement,
        [
            new(new Symbol("CV1", "spread of the first", "%", 0.01, 500), x => x.First.Percent),
            new(new Symbol("CV2", "spread of the second", "%", 0.01, 500), x => x.Second.Percent),
        ],
        new(new Symbol("CV", "spread of the pooled result", "%"), y => y.Percent),
        v => (CoefficientOfVariation.FromPercent(v[0]), CoefficientOfVariation.FromPercent(v[1])),
        x => CoefficientOfVariation.FromFraction(Math.Sqrt(Math.Exp(Combined(x.First.OfLogarithm, x.Second.OfLogarithm)) - 1)),
        NoExample);

    /// <summary>Two pH results of one block as one: pH is a logarithm already, so the plain weighted mean.</summary>
    public static Formula<(Coefficient First, Coefficient Second, PhSpread FirstSpread, PhSpread SecondSpread), Coefficient> PooledPh { get; } = new(
        "pooled-ph",
        "Two pH results of one block as one",
        "x = (w1 × x1 + w2 × x2) / (w1 + w2), w1 = 1 / SD1², w2 = 1 / SD2²",
        Citation.OurJudgement,
        [
            new(new Symbol("x1", "first pH", "pH", 0, 14), x => x.First.Value),
            new(new Symbol("x2", "second pH", "pH", 0, 14), x => x.Second.Value),
            new(new Symbol("SD1", "standard deviation of the first", "pH", 0.001, 14), x => x.FirstSpread.PhUnits),
            new(new Symbol("SD2", "standard deviation of the second", "pH", 0.001, 14), x => x.SecondSpread.PhUnits),
        ],
        new(new Symbol("x", "pooled pH", "pH"), y => y.Value),
        v => (new(v[0]), new(v[1]), PhSpread.FromPhUnits(v[2]), PhSpread.FromPhUnits(v[3])),
        x => new Coefficient(Weighted(x.First.Value, x.Second.Value, x.FirstSpread.PhUnits, x.SecondSpread.PhUnits)),
        NoExample);

    /// <summary>Standard deviation of two pooled pH results.</summary>
    public static Formula<(PhSpread First, PhSpread Second), PhSpread> PooledPhSpread { get; } = new(
        "pooled-ph-spread",
        "Standard deviation of two pH results pooled",
        "SD = 1 / √(1 / SD1² + 1 / SD2²)",
        Citation.OurJudgement,
        [
            new(new Symbol("SD1", "standard deviation of the first", "pH", 0.001, 14), x => x.First.PhUnits),
            new(new Symbol("SD2", "standard deviation of the second", "pH", 0.001, 14), x => x.Second.PhUnits),
        ],
        new(new Symbol("SD", "standard deviation of the pooled pH", "pH"), y => y.PhUnits),
        v => (PhSpread.FromPhUnits(v[0]), PhSpread.FromPhUnits(v[1])),
        x => PhSpread.FromPhUnits(Math.Sqrt(Combined(x.First.PhUnits, x.Second.PhUnits))),
        NoExample);

    // The mean of Φ((limit − t) / s) over t from low to high, in closed form by Φ's integral z Φ(z) + φ(z).
    private static Probability Below(double low, double high, double limit, double s)
    {
        if (double.IsNegativeInfinity(limit))
        {
            return default;
        }

        var width = high - low;
        if (s <= 0)
        {
            return Probability.FromFraction(width > 0 ? Math.Clamp((limit - low) / width, 0, 1) : limit > low ? 1 : 0);
        }

        // Where the printed step is nothing beside the spread the difference of two integrals would be noise.
        var fraction = width / s < 1e-5
            ? Normal.CDF(0, 1, (limit - ((low + high) / 2)) / s)
            : s / width * (IntegralOfNormal((limit - low) / s) - IntegralOfNormal((limit - high) / s));
        return Probability.FromFraction(Math.Clamp(fraction, 0, 1));
    }

    private static double IntegralOfNormal(double z) => (z * Normal.CDF(0, 1, z)) + Normal.PDF(0, 1, z);

    private static double Weighted(double first, double second, double firstDeviation, double secondDeviation)
    {
        var (w1, w2) = (1 / (firstDeviation * firstDeviation), 1 / (secondDeviation * secondDeviation));
        return ((w1 * first) + (w2 * second)) / (w1 + w2);
    }

    private static double Combined(double firstDeviation, double secondDeviation) =>
        1 / ((1 / (firstDeviation * firstDeviation)) + (1 / (secondDeviation * secondDeviation)));
}
