using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>What was assumed of the climate because nobody said it.</summary>
internal static class ClimateAssumptions
{
    public static IReadOnlyList<Assumption> For(CoverCropQuestion question)
    {
        var climate = question.Climate;
        var assumptions = new List<Assumption>(FrostSeason.Of(climate).Assumptions);
        if (climate.Zone is null && question.Gap.To.Year > question.Gap.From.Year)
        {
            assumptions.Add(new Assumption("hardiness-zone-not-given", "Your hardiness zone was not given: whether a cover crop lives through winter stays open.", Citation.OurJudgement));
        }

        if (climate.Temperatures is { Normals: { } normals } && climate.Temperatures.Given.Count < question.Gap.Days)
        {
            assumptions.Add(new Assumption("daily-from-monthly", $"Daily temperatures lie on straight lines between the middles of the months{(normals.HasExtremes ? "" : "; low and high of a day are taken as its mean, so near the base the sum is too small")}.", Citation.OurJudgement));
        }

        return assumptions;
    }
}
