using System.Text.Json.Serialization;

namespace SoilAdvisor.Api.Http;

/// <summary>
/// A number as the caller wrote it, not yet judged: JSON number or text. The digits are kept, so 7.0 and 7.00 stay apart; what is not a
/// number is kept as text, so that the validator can say what is wrong with it.
/// </summary>
/// <param name="Text">As written.</param>
[JsonConverter(typeof(WrittenNumberConverter))]
internal readonly record struct WrittenNumber(string Text)
{
    // No amount of this trade comes near; beyond it sums and products would run out of digits.
    private const decimal Largest = 1_000_000_000_000;

    /// <summary>The number; null when the text is none, or none of this trade's size (a million million).</summary>
    public decimal? Number =>
        decimal.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number is >= -Largest and <= Largest ? number : null;

    /// <summary>True for "1,5": a comma where a point belongs, or between thousands.</summary>
    public bool HasDecimalComma => Text is not null && Text.Contains(',', StringComparison.Ordinal) && IsFigure(Text.Replace(',', '.'));

    /// <summary>True for "&lt; 5": the comparator is written with the number.</summary>
    public bool HasComparator => Text is not null && Text.TrimStart().StartsWith('<') | Text.TrimStart().StartsWith('>');

    /// <summary>True for a number beyond any size of this trade.</summary>
    public bool IsTooLarge => Number is null && IsFigure(Text) && double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    /// <summary>As shown in a message, at most 40 letters.</summary>
    public string Shown => Text is null ? "nothing" : Text.Length > 40 ? Text[..40] + "…" : Text;

    /// <summary>A number of ours in the shape of the request.</summary>
    public static WrittenNumber Of(decimal number) => new(number.ToString(CultureInfo.InvariantCulture));

    private static bool IsFigure(string? text) =>
        text is not null && text.AsSpan().Trim() is { IsEmpty: false } figure && !figure.ContainsAnyExcept("+-.eE0123456789") && figure.ContainsAnyInRange('0', '9');
}
