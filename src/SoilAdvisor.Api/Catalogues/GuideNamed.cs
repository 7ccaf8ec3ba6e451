using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A guide by name, with what it was made for.</summary>
internal sealed record GuideNamed(string Id, string Title, string Institution, IReadOnlyList<string> Regions, string Crops, string CalibratedOn, string? Notes, CitedAs By) : Sourced(By)
{
    public static GuideNamed Of(Guide guide, Calculation calculation) =>
        new(guide.Id, guide.Title, guide.Institution, guide.Regions, guide.Crops, guide.CalibratedOn, guide.Notes, calculation.Cite(guide.Source));
}
