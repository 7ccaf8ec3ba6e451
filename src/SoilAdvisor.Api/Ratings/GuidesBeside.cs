using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Planning;

namespace SoilAdvisor.Api.Ratings;

/// <summary>The guides that were asked to stand beside the chosen one.</summary>
internal static class GuidesBeside
{
    private const string All = "all";

    /// <summary>Their readings of the soil test; an unknown id is refused at its place. What another guide cannot rate stands with it and refuses nothing of the answer.</summary>
    public static (IReadOnlyList<GuideViewAnswer> Views, IReadOnlyList<GuideAgreementAnswer> Agreement) Read(
        IReadOnlyList<string> asked, GuideSelection chosen, SoilTest test, RatingContext context, Calculation calculation)
    {
        var views = Guides(asked, chosen, test, calculation).Select(g => GuideComparison.Read(g, test, context)).ToList();
        return (
            [.. views.Select(v => Write(v, test, calculation))],
            [.. GuideComparison.Agreements([GuideComparison.Read(chosen.Guide, test, context), .. views])
                .Select(a => new GuideAgreementAnswer(Words.Analytes.IdOf(a.Analyte), a.IsUnanimous, a.Text))]);
    }

    private static List<Guide> Guides(IReadOnlyList<string> asked, GuideSelection chosen, SoilTest test, Calculation calculation)
    {
        var guides = new List<Guide>();
        for (var i = 0; i < Math.Min(asked.Count, Limits.GuidesBeside); i++)
        {
            if (asked[i] == All)
            {
                guides.AddRange(GuideComparison.Others(chosen, test, calculation.Tables));
            }
            else if (Named.Read(asked[i], PointerPath.Down("/beside", i), calculation.Tables.Guide, calculation.Faults) is { } guide)
            {
                guides.Add(guide);
            }
        }

        return [.. guides.Where(g => g.Id != chosen.Guide.Id).DistinctBy(g => g.Id)];
    }

    private static GuideViewAnswer Write(GuideView view, SoilTest test, Calculation calculation) => new(
        GuideNamed.Of(view.Guide, calculation),
        [.. view.Ratings.Select(r => RatingWriter.Write(r, RatingCertainties.Of(r, test, calculation.Tables.Variability), null, calculation))],
        view.Refused.Count > 0 ? [.. view.Refused.Select(r => Fault.Of(r.Reading.Where, r.Refusal))] : null);
}
