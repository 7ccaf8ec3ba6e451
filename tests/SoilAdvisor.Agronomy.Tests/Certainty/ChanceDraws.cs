namespace SoilAdvisor.Agronomy.Tests.Certainty;

/// <summary>
/// The measurement played through: a true value anywhere, a result around it, printed as the laboratory prints. The true values whose result
/// printed alike tell how likely each class is. Knows nothing of the closed form it is compared with.
/// </summary>
internal static class ChanceDraws
{
    public const int Kept = 200_000;

    /// <summary>Share of the kept true values that lie below each limit.</summary>
    public static double[] BelowEach(double printed, int decimals, double deviation, bool logarithmic, double[] limits, int seed)
    {
        var random = new Random(seed);
        var below = new int[limits.Length];
        var centre = logarithmic ? Math.Log(printed) : printed;
        for (var kept = 0; kept < Kept;)
        {
            var truth = centre + (((2 * random.NextDouble()) - 1) * 7 * deviation);
            var measured = truth + (deviation * StandardNormal(random));
            if (Math.Round(logarithmic ? Math.Exp(measured) : measured, decimals, MidpointRounding.AwayFromZero) != printed)
            {
                continue;
            }

            kept++;
            var value = logarithmic ? Math.Exp(truth) : truth;
            for (var i = 0; i < limits.Length; i++)
            {
                below[i] += value < limits[i] ? 1 : 0;
            }
        }

        return [.. below.Select(count => (double)count / Kept)];
    }

    private static double StandardNormal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
