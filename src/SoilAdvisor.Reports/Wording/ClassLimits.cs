using SoilAdvisor.Agronomy.Ratings;

namespace SoilAdvisor.Reports.Wording;

/// <summary>The limits of a class in words: whether a limit belongs to the class is said, never left to the reader.</summary>
internal static class ClassLimits
{
    /// <summary>The limits with their unit.</summary>
    public static string WithUnit(RatingScale scale, int index, decimal? cec) =>
        TradeWords.Of(scale.Unit) is { Length: > 0 } unit ? Of(scale, index, cec, " " + unit) : Of(scale, index, cec);

    public static string Of(RatingScale scale, int index, decimal? cec, string unit = "")
    {
        var printed = scale.Classes[index];
        var lower = scale.LowerOf(index, cec);
        var upper = scale.UpperOf(index, cec);
        if (index == 0 && lower is null or 0)
        {
            lower = null;
        }

        return (lower, upper) switch
        {
            ({ } l, { } u) => $"{(printed.LowerIncluded ? "from" : "above")} {Figure.AsReported(l)} {(printed.UpperIncluded ? "to" : "to under")} {Figure.AsReported(u)}{unit}",
            ({ } l, null) => printed.LowerIncluded ? $"{Figure.AsReported(l)}{unit} and up" : $"above {Figure.AsReported(l)}{unit}",
            (null, { } u) => printed.UpperIncluded ? $"up to {Figure.AsReported(u)}{unit}" : $"under {Figure.AsReported(u)}{unit}",
            _ => "any value",
        };
    }
}
