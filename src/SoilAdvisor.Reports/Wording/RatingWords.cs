using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Rulers;

namespace SoilAdvisor.Reports.Wording;

/// <summary>What a rating means: the guide's class and how sure it is, its limits, and how we read that class.</summary>
internal static class RatingWords
{
    public static Cell Verdict(RatedLine line) => Cell.Of(
        line.HowSure ?? line.Rating.Class.Name,
        $"{line.Rating.Class.Name}: {ClassLimits.Of(line.Rating.Scale, line.Rating.ClassIndex, line.Rating.Cec)} {TradeWords.Of(line.Rating.Scale.Unit)}".TrimEnd(),
        TradeWords.Of(line.Rating.Standing) + (line.Rating.Class.StandingIsOurs ? " (our reading of the class)" : ""));
}
