using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The target pH of one crop, with the row it comes from and the floor of the region.</summary>
internal sealed record CropTarget(Crop Crop, decimal Value, bool IsLowEnd, decimal? LimeBelow, TargetPhRow? Row, TargetPhRow? Floor, Citation Source)
{
    /// <summary>The region's row that was read; else the crop's own figure, for mineral soils; else a row of no region. Null where there is none.</summary>
    public static CropTarget? Of(Crop crop, bool organic, IReadOnlyList<TargetPhRow> rows, string? region)
    {
        var regional = region is null ? [] : rows.Where(r => r.Regions.Contains(region, StringComparer.Ordinal)).ToList();
        var floor = Best(crop, regional.Where(r => r.Ph is PublishedPh.Floor));
        var own = organic ? null : OwnOf(crop);
        var aim = Best(crop, regional.Where(r => r.Ph.Aim is not null && (own is null || r.Source.Evidence == Evidence.Seen)))
            ?? (own is null ? Best(crop, rows.Where(r => r.Regions.Count == 0 && r.Ph.Aim is not null)) : null);
        var target = aim is not null ? new CropTarget(crop, aim.Ph.Aim!.Value, aim.Ph is PublishedPh.Optimum { Low: var low, High: var high } && low < high, null, aim, null, aim.Source) : own;
        return floor?.Ph is PublishedPh.Floor { Value: var limeBelow } && target is not null ? target with { LimeBelow = limeBelow, Floor = floor } : target;
    }

    private static TargetPhRow? Best(Crop crop, IEnumerable<TargetPhRow> rows) => rows
        .Where(r => r.AllOthers || r.Crops.Contains(crop.Id, StringComparer.Ordinal))
        .OrderBy(r => r.AllOthers)
        .ThenBy(r => r.Source.Evidence == Evidence.FromMemory)
        .FirstOrDefault();

    private static CropTarget? OwnOf(Crop crop) => crop.ValueOf("target-ph") is { } figure && (figure.Value ?? figure.Low) is { } value
        ? new CropTarget(crop, value, figure.Value is null, crop.ValueOf("lime-below-ph")?.Value, null, null, figure.Source)
        : null;
}
