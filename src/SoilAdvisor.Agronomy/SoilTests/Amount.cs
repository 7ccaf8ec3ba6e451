using System.Globalization;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>
/// What the laboratory reported, digit for digit: a number, less than a number, more than a number, or nothing. Default is nothing.
/// 7.0 and 7.00 are kept apart. "Less than 5" is never 0 and never 2.5.
/// </summary>
public readonly record struct Amount
{
    private Amount(AmountKind kind, decimal number) => (Kind, Number) = (kind, number);

    /// <summary>What kind of statement it is.</summary>
    public AmountKind Kind { get; }

    /// <summary>The number as printed: the value, or the limit it lies below or above. Zero when missing.</summary>
    public decimal Number { get; }

    /// <summary>How many decimals were printed.</summary>
    public int Decimals => Number.Scale;

    /// <summary>A number.</summary>
    /// <param name="number">As printed.</param>
    public static Amount Measured(decimal number) => new(AmountKind.Measured, number);

    /// <summary>Less than a number.</summary>
    /// <param name="limit">As printed.</param>
    public static Amount Below(decimal limit) => new(AmountKind.Below, limit);

    /// <summary>More than a number.</summary>
    /// <param name="limit">As printed.</param>
    public static Amount Above(decimal limit) => new(AmountKind.Above, limit);

    /// <summary>The same statement about a converted number.</summary>
    /// <param name="factor">Exact factor.</param>
    public Amount Times(decimal factor) => new(Kind, Number * factor);

    /// <summary>As a laboratory prints it: "14", "&lt; 5", "&gt; 900", "not reported".</summary>
    public override string ToString() => Kind switch
    {
        AmountKind.Measured => Number.ToString(CultureInfo.InvariantCulture),
        AmountKind.Below => "< " + Number.ToString(CultureInfo.InvariantCulture),
        AmountKind.Above => "> " + Number.ToString(CultureInfo.InvariantCulture),
        _ => "not reported",
    };
}
