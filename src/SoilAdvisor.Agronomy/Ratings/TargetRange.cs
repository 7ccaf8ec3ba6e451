namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>The stretch of a scale where its guide wants a soil to be: from the lowest class at target to the highest.</summary>
/// <param name="Lower">Lower limit in the scale's unit; null for open below.</param>
/// <param name="Upper">Upper limit in the scale's unit; null for open above.</param>
public readonly record struct TargetRange(decimal? Lower, decimal? Upper)
{
    /// <summary>The target range of a rating's scale; null where no class of it stands at target, as on a reference range.</summary>
    /// <param name="rating">The rating: its conditions fix the limits.</param>
    public static TargetRange? Of(Rating rating)
    {
        var at = Enumerable.Range(0, rating.Scale.Classes.Count).Where(i => rating.Scale.Classes[i].Standing == Standing.Target).ToList();
        return at.Count == 0 ? null : new TargetRange(rating.Scale.LowerOf(at[0], rating.Cec), rating.Scale.UpperOf(at[^1], rating.Cec));
    }
}
