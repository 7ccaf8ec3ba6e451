using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Reports.Rulers;

namespace SoilAdvisor.Reports.Wording;

/// <summary>What a rating means, in one breath: the guide's class with its limits, and how we read that class.</summary>
internal static class RatingWords
{
    public static string Verdict(Rating rating) =>
        $"{RulerWords.Place(rating)}: {TradeWords.Of(rating.Standing)}{(rating.Class.StandingIsOurs ? " (our reading of the class)" : "")}.";
}
