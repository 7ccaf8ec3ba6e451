using SoilAdvisor.Agronomy.Ratings;

namespace SoilAdvisor.Reports.Wording;

/// <summary>The limits of a class in words: whether a limit belongs to the class is said, never left to the reader.</summary>
internal static class ClassLimits
{
    public static string Of(RatingScale scale, int index, decimal? cec)
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
            ({ } l, { } u) => $"{(printed.LowerIncluded ? "from" : "above")} {Figure.AsReported(l)} {(printed.UpperIncluded ? "to" : "to under")} {Figure.AsReported(u)}",
            ({ } l, null) => printed.LowerIncluded ? $"{Figure.AsReported(l)} and up" : $"above {Figure.AsReported(l)}",
            (null, { } u) => printed.UpperIncluded ? $"up to {Figure.AsReported(u)}" : $"under {Figure.AsReported(u)}",
            _ => "any value",
        };
    }
}
