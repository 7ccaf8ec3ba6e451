using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Lime;

/// <summary>Asks how much lime a soil needs, and which stone.</summary>
internal sealed record LimeRequest
{
    /// <summary>Lime method id; left out, the one made for the buffer and the region.</summary>
    public string? Method { get; init; }

    /// <summary>Lime method ids to show side by side, or the one word "all" for every method made for the buffer of the report.</summary>
    public IReadOnlyList<string>? Methods { get; init; }

    public string? Guide { get; init; }

    public string? Region { get; init; }

    public WrittenSoilTest? SoilTest { get; init; }

    /// <summary>Target pH; left out, the crop's.</summary>
    public WrittenNumber? TargetPh { get; init; }

    public string? Crop { get; init; }

    /// <summary>The bed's crops in order, instead of one crop.</summary>
    public IReadOnlyList<string>? Crops { get; init; }

    /// <summary>Depth that the lime is worked in; left out, the method's.</summary>
    public WrittenQuantity? Depth { get; init; }

    /// <summary>worked-in (default) or surface.</summary>
    public string? Incorporation { get; init; }

    /// <summary>Day of the first spreading; left out, doses are told in months only.</summary>
    public string? Date { get; init; }

    /// <summary>Lime spread lately, which the test may not show yet.</summary>
    public WrittenRecentLime? RecentLime { get; init; }

    public WrittenQuantity? Area { get; init; }

    /// <summary>Stones at hand; left out, those of the tables.</summary>
    public IReadOnlyList<WrittenMaterial>? Materials { get; init; }
}
