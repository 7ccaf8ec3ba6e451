using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Rulers;

namespace SoilAdvisor.Reports.Wording;

/// <summary>What a rating means: the guide's class and how sure it is, its limits, and how we read that class.</summary>
internal static class RatingWords
{
    public static Cell Verdict(RatedLine line)
    {
        var (rating, name) = (line.Rating, line.Rating.Class.Name);
        var limits = ClassLimits.WithUnit(rating.Scale, rating.ClassIndex, rating.Cec);
        return Cell.Of(
            line.HowSure ?? name,
            (line.HowSure ?? name) == name ? limits : $"{name}: {limits}",
            TradeWords.Of(rating.Standing) + (rating.Class.StandingIsOurs ? " (our reading)" : ""));
    }
}
