using SoilAdvisor.Agronomy.Crops;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Which waits apply between a cover crop and the next crop. The longest that binds is kept free in the calendar.</summary>
internal static class PlantBacks
{
    public static PlantBack For(CoverCrop cover, Crop? next, bool killedByWinter, IEnumerable<PlantBackRule> rules)
    {
        var when = killedByWinter ? "winter-killed" : "killed-green";
        var applying = rules
            .Where(r => r.When == "any" || r.When == when)
            .Where(r => r.CoverCrops.Count == 0 || r.CoverCrops.Contains(cover.Id) || r.CoverCrops.Contains(cover.Family))
            .Where(r => r.NextCrops.Count == 0 || (next is not null && (r.NextCrops.Contains(next.Id) || r.NextCrops.Contains(next.Family))))
            .OrderByDescending(r => r.DaysLow)
            .ToList();
        return new PlantBack(applying.Where(r => r.Binding).Select(r => r.DaysLow).DefaultIfEmpty(0).Max(), applying);
    }
}
