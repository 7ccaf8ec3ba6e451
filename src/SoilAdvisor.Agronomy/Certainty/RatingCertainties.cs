using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>
/// From a rating to the probability of each class. The true value is lognormal around the result (normal for pH); nothing else is taken to be
/// known about it beforehand. A step of its own after the rating: who only rates does not pay for it.
/// </summary>
public static class RatingCertainties
{
    /// <summary>Probability of each class of a rating's scale.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="test">Its soil test: the number of cores comes from it.</param>
    /// <param name="variability">The published spreads.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The certainty, or a refusal: no spread is published, an index was rated, or the scale is a reference range with gaps.</returns>
    public static Answer<RatingCertainty> Of(Rating rating, SoilTest test, Variability variability, WorkingSheet? working = null) => rating.Scale.Index is { } index
        ? Answer<RatingCertainty>.Refused(
            "index-spread-not-known",
            $"The index {index} of {rating.Guide} is computed from several results, and no published figure says how far it varies, so no probability is given for it.",
            "Take its class as read; the results it is computed from vary each by itself.")
        : ResultSpreads.Of(variability, rating.Reading, rating.Amount, test.Cores, working).Then(spread => Of(rating, spread, working));

    /// <summary>Probability of each class of a rating's scale, by a spread that is known already: of a pooled or a converted result.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="spread">Spread of its result.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The certainty, or a refusal: the scale is a reference range with gaps.</returns>
    public static Answer<RatingCertainty> Of(Rating rating, ResultSpread spread, WorkingSheet? working = null) => LimitsBetween(rating) is { } limits
        ? Answer<RatingCertainty>.Given(Of(rating, limits, spread, working))
        : Answer<RatingCertainty>.Refused(
            "no-class-to-be-sure-of",
            $"The scale of {rating.Guide} for {Words.Analytes.IdOf(rating.Analyte)} is a reference range that leaves values out; it has no classes to be sure of.",
            "Take it as information.");

    private static RatingCertainty Of(Rating rating, double[] limits, ResultSpread spread, WorkingSheet? working)
    {
        var classes = Classes(rating, limits, spread, working);
        var assumptions = new List<Assumption>(spread.Assumptions);
        if (classes.Any(c => c.Probability is null))
        {
            assumptions.Add(new Assumption(
                "open-result-bounds",
                $"{Words.Analytes.IdOf(rating.Analyte)} was reported as {rating.Reading.Amount} {Words.Units.IdOf(rating.Reading.Unit)}: each class has bounds and no single probability.",
                Citation.OurJudgement));
        }

        return new RatingCertainty(classes, spread, CertaintyWords.Of(classes, rating.ClassIndex), assumptions);
    }

    private static IReadOnlyList<ClassProbability> Classes(Rating rating, double[] limits, ResultSpread spread, WorkingSheet? working)
    {
        var halfStep = HalfStep(rating);
        var (kind, number) = (rating.Amount.Kind, (double)rating.Amount.Number);
        // A limit of 0, "more than 0", is a limit just above it.
        number = spread.OnLogScale && kind != AmountKind.Measured ? Math.Max(number, 1e-9) : number;
        // A printed 0 is "less than half of its last digit": on a scale of ratios nothing lies at nought.
        if (spread.OnLogScale && kind == AmountKind.Measured && number <= 0)
        {
            (kind, number) = (AmountKind.Below, halfStep);
        }

        var at = Shares(limits, number, kind == AmountKind.Measured ? halfStep : 0, spread, working);
        return kind == AmountKind.Measured
            ? [.. at.Select((share, i) => Probable(rating, i, share, share, Probability.FromFraction(share)))]
            : [.. at.Select((share, i) => Bounded(rating, limits, i, share, number, kind, spread))];
    }

    private static ClassProbability Probable(Rating rating, int index, double least, double most, Probability? point = null) =>
        new(index, rating.Scale.Classes[index].Name, rating.Scale.Classes[index].Standing, point, Probability.FromFraction(least), Probability.FromFraction(most));

    // The result may be anything beyond the printed limit. The class at that end can only gain; any other is likeliest where the result stands in its middle.
    private static ClassProbability Bounded(Rating rating, double[] limits, int index, double share, double number, AmountKind kind, ResultSpread spread)
    {
        var end = kind == AmountKind.Below ? 0 : limits.Length;
        if (index == end)
        {
            return Probable(rating, index, share, 1);
        }

        if (index == 0 || index == limits.Length)
        {
            return Probable(rating, index, 0, share);
        }

        var middle = spread.OnLogScale ? Math.Sqrt(limits[index - 1] * limits[index]) : (limits[index - 1] + limits[index]) / 2;
        var likeliest = kind == AmountKind.Below ? Math.Min(number, middle) : Math.Max(number, middle);
        return Probable(rating, index, 0, likeliest > 0 ? Shares(limits, likeliest, 0, spread, null)[index] : share);
    }

    private static double[] Shares(double[] limits, double number, double halfStep, ResultSpread spread, WorkingSheet? working)
    {
        var shares = new double[limits.Length + 1];
        var below = 0d;
        for (var i = 0; i < limits.Length; i++)
        {
            var next = Math.Max(below, Below(limits[i], number, halfStep, spread, working));
            shares[i] = next - below;
            below = next;
        }

        shares[^1] = 1 - below;
        return shares;
    }

    private static double Below(double limit, double number, double halfStep, ResultSpread spread, WorkingSheet? working)
    {
        var (formula, size) = spread.OnLogScale
            ? (CertaintyFormulas.BelowLimit, spread.Relative.Percent)
            : (CertaintyFormulas.BelowPhLimit, spread.PhUnits.PhUnits);
        var x = new ResultNearLimit(new Coefficient(number), new Coefficient(halfStep), new Coefficient(limit), new Coefficient(size));
        return formula.Of(x, working, Origin.Given("the result"), Origin.Given("its last printed digit"), Origin.Given("the guide's limit"), Origin.Given("the spread above")).Fraction;
    }

    // Half of the last digit that the laboratory printed, in the scale's unit.
    private static double HalfStep(Rating rating)
    {
        var reported = rating.Reading.Amount;
        var factor = reported.Number == 0 ? 1 : (double)(rating.Amount.Number / reported.Number);
        return 0.5 * Math.Pow(10, -reported.Decimals) * factor;
    }

    // Null where two neighbours leave a gap that no printed value falls into by rounding.
    private static double[]? LimitsBetween(Rating rating)
    {
        var scale = rating.Scale;
        var last = scale.Classes.Count - 1;
        if ((scale.Classes[0].Lower is { } lowest && lowest != 0) || scale.Classes[last].Upper is not null)
        {
            return null;
        }

        var limits = new double[last];
        for (var i = 0; i < last; i++)
        {
            if (scale.UpperOf(i, rating.Cec) is not { } upper || (scale.PrintedDecimals is null && scale.LowerOf(i + 1, rating.Cec) != upper))
            {
                return null;
            }

            limits[i] = scale.PrintedDecimals is { } decimals ? BetweenBins(upper, scale.Classes[i].UpperIncluded, decimals) : (double)upper;
        }

        return limits;
    }

    // Printed bins (0 to 25, 26 to 50) meet half a step above the last value of the lower one.
    private static double BetweenBins(decimal upper, bool included, int decimals)
    {
        var step = (decimal)Math.Pow(10, -decimals);
        var highest = included ? Math.Floor(upper / step) : Math.Ceiling(upper / step) - 1;
        return (double)((highest * step) + (step / 2));
    }
}
