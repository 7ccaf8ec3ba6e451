using System.Globalization;

namespace SoilAdvisor.Agronomy.Sampling;

/// <summary>How near a sample's mean comes to the block's, plus or minus in percent of it. Default is 0, which no sample reaches.</summary>
public readonly record struct Precision
{
    private Precision(double percent) => Percent = percent >= 0 && double.IsFinite(percent)
        ? percent
        : throw new ArgumentOutOfRangeException(nameof(percent), "A precision is 0 % or more.");

    /// <summary>In percent.</summary>
    public double Percent { get; }

    /// <summary>From percent.</summary>
    /// <param name="value">Percent, not negative.</param>
    public static Precision FromPercent(double value) => new(value);

    /// <summary>For example "20 %".</summary>
    public override string ToString() => Math.Round(Percent, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture) + " %";
}
