using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>Indices that the guide computes, once a soil test, and limits of law, which stand apart from every class.</summary>
internal static class IndexSection
{
    public static IEnumerable<Block> Of(FarmPlan plan)
    {
        var tests = plan.Beds.DistinctBy(b => b.Bed.SoilTest.Id).ToList();
        var indices = tests.SelectMany(b => b.Indices.Select(i => (Test: b.Bed.SoilTest.Id, i.Index, i.Answer))).ToList();
        if (indices.Count > 0)
        {
            yield return new Heading(3, "Indices");
            var rated = indices.Where(i => i.Answer.IsGiven).ToList();
            if (rated.Count > 0)
            {
                yield return new SourcedTable(
                    ["Soil test", "Index", "Value", "Class", "How it is computed"],
                    [.. rated.Select(i => Row(i.Test, i.Index, i.Answer.Value))]);
            }

            var refused = indices.Where(i => !i.Answer.IsGiven).ToList();
            if (refused.Count > 0)
            {
                yield return new Bullets([.. refused.Select(i => new Paragraph(
                    new Sentence($"{i.Test}: {TradeWords.Sentence(i.Answer.Reason.Message)} {TradeWords.Sentence(i.Answer.Reason.Suggestion)}", Citation.OurJudgement)))]);
            }
        }

        var ceilings = tests.SelectMany(b => b.Ceilings.Select(c => (Test: b.Bed.SoilTest.Id, Finding: c))).OrderBy(c => c.Finding.State == FindingState.Act ? 0 : 1).ToList();
        if (ceilings.Count > 0)
        {
            yield return new Heading(3, "Limits of law");
            yield return new Paragraph(new Sentence("These are no classes: they say what an authority limits, not what a crop needs. The local authority decides."));
            yield return new SourcedTable(
                ["Soil test", "State", "What it says"],
                [.. ceilings.Select(c => new SourcedRow([c.Test, TradeWords.Of(c.Finding.State), TradeWords.Sentence(c.Finding.Message)], [c.Finding.Source]))]);
        }
    }

    private static SourcedRow Row(string test, GuideIndex index, Rating rating) => new(
        [
            test,
            index.Formula.Title,
            $"{rating.Amount} {TradeWords.Of(rating.Scale.Unit)}",
            Cell.Of(rating.Class.Name, ClassLimits.WithUnit(rating.Scale, rating.ClassIndex, rating.Cec), TradeWords.Of(rating.Standing) + (rating.Class.StandingIsOurs ? " (our reading)" : "")),
            index.Formula.Shown,
        ],
        [rating.Source, index.Source]);
}
