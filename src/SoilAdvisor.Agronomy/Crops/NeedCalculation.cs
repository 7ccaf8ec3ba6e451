using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>From a rated soil test and the crops of a bed to what the guide advises, nutrient by nutrient, and what is already coming.</summary>
public static class NeedCalculation
{
    /// <summary>
    /// The needs and credits of one bed. Nitrogen and the micronutrients are advised per crop and do not depend on a class; phosphate,
    /// potash, magnesium, sulfur and calcium are read through a pair of guide and rate table, once per soil test. A nutrient without an
    /// answer is refused with its reason; the others stand.
    /// </summary>
    /// <param name="test">The soil test: texture and exchange capacity come from it.</param>
    /// <param name="guide">The guide that rated it.</param>
    /// <param name="rateTables">All rate tables by id.</param>
    /// <param name="ratings">Ratings by that guide; those of other guides are not used.</param>
    /// <param name="plantings">Crops of the bed in order; at least one.</param>
    /// <param name="previous">What stood on the bed before.</param>
    /// <param name="coverCrops">Cover crops by id.</param>
    /// <param name="working">Receives the working; null for none. The numbers are the same.</param>
    public static BedNeed For(
        SoilTest test,
        Guide guide,
        IReadOnlyDictionary<string, RateTable> rateTables,
        IReadOnlyList<Rating> ratings,
        IReadOnlyList<Planting> plantings,
        IReadOnlyList<PreviousStand> previous,
        IReadOnlyDictionary<string, CoverCrop> coverCrops,
        WorkingSheet? working)
    {
        var request = new NeedRequest(test, guide, rateTables, ratings, plantings);
        var nitrogenTable = RatesForAnyTest.AddTo(request, working);
        RatesByTest.AddTo(request, working);
        StandCredits.AddTo(request, nitrogenTable, previous, coverCrops, working);
        return new BedNeed(request.Needs, request.Credits, request.Refused, request.Assumptions);
    }
}
