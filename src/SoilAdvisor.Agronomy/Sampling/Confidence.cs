using System.Globalization;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>
/// In how many of a hundred repeats a statement holds, from 50 to 99.9 %. Below that chance alone would do as well; above it no sampling of a
/// field can promise anything. Default is 0 and states nothing.
/// </summary>
public readonly record struct Confidence
{
    /// <summary>Lowest that can be asked for, percent.</summary>
    public const decimal LowestPercent = 50;

    /// <summary>Highest that can be asked for, percent.</summary>
    public const decimal HighestPercent = 99.9m;

    private Confidence(double percent) => Percent = percent is >= (double)LowestPercent and <= (double)HighestPercent
        ? percent
        : throw new ArgumentOutOfRangeException(nameof(percent), "A confidence lies from 50 to 99.9 %.");

    /// <summary>What is taken where none is asked for: 95 %, the usual figure of trials. Ours.</summary>
    public static Confidence Usual { get; } = new(95);

    /// <summary>In percent.</summary>
    public double Percent { get; }

    /// <summary>From percent.</summary>
    /// <param name="value">Percent, 50 to 99.9.</param>
    public static Confidence FromPercent(double value) => new(value);

    /// <summary>For example "95 %".</summary>
    public override string ToString() => Percent.ToString("0.#", CultureInfo.InvariantCulture) + " %";
}
