using MathNet.Numerics.Distributions;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>
/// Between which values the true value of the ground likely lies, in the unit of the scale: four times in five within, one time in ten
/// below, one in ten above. The share of four in five is ours.
/// </summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public readonly record struct LikelyRange(double Low, double High)
{
    /// <summary>How much of the probability lies within.</summary>
    public static Probability Share { get; } = Probability.FromFraction(0.8);

    /// <summary>Standard deviations from the middle to either end: 1.2816 for four in five.</summary>
    public static Coefficient StandardScore { get; } = new(Normal.InvCDF(0, 1, (1 + Share.Fraction) / 2));

    /// <summary>The range around a measured result; null for "less than", "more than", and for a zero, which has no proportion.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="spread">Spread of its result.</param>
    public static LikelyRange? Of(Rating rating, ResultSpread spread)
    {
        var result = (double)rating.Amount.Number;
        if (rating.Amount.Kind != AmountKind.Measured || (spread.OnLogScale && result <= 0))
        {
            return null;
        }

        if (!spread.OnLogScale)
        {
            return new LikelyRange(result - (StandardScore.Value * spread.PhUnits.PhUnits), result + (StandardScore.Value * spread.PhUnits.PhUnits));
        }

        var ratio = Math.Exp(StandardScore.Value * spread.Relative.OfLogarithm);
        return new LikelyRange(result / ratio, result * ratio);
    }
}
