using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Ratings;

/// <summary>Asks how a guide rates a soil test.</summary>
internal sealed record RatingsRequest
{
    /// <summary>Guide id; left out, the nearest that covers the test is taken and named.</summary>
    public string? Guide { get; init; }

    /// <summary>ISO 3166-2, for example US-DE.</summary>
    public string? Region { get; init; }

    /// <summary>Part of the guide's region, where a guide asks for one.</summary>
    public string? Subregion { get; init; }

    /// <summary>Crop id, where a guide rates crops differently, and for a nitrate test.</summary>
    public string? Crop { get; init; }

    /// <summary>Whether the soil was manured for this crop; a nitrate test asks for it.</summary>
    public bool? Manured { get; init; }

    /// <summary>Ids of guides to rate the test by as well, or the one word "all" for every guide with limits for its extractants.</summary>
    public IReadOnlyList<string>? Beside { get; init; }

    /// <summary>Ids of published conversions to another method; nothing is converted that is not named here.</summary>
    public IReadOnlyList<string>? Conversions { get; init; }

    public WrittenSoilTest? SoilTest { get; init; }
}
