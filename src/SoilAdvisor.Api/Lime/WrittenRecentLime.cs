using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Lime;

/// <summary>Lime spread lately, as received.</summary>
internal sealed record WrittenRecentLime
{
    /// <summary>As a rate: lb/acre, ton/acre, lb/1000-sq-ft, lb/100-sq-ft, kg/ha or t/ha. Left out, nothing can be taken off, and that is said.</summary>
    public WrittenQuantity? Amount { get; init; }

    /// <summary>The liming material; left out, it counts as calcium carbonate equivalent.</summary>
    public string? Material { get; init; }

    public string? Date { get; init; }
}
