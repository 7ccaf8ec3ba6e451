using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Climate;

/// <summary>Daily lows and highs from a day on, as received. They go before the monthly normals.</summary>
internal sealed record WrittenDays
{
    /// <summary>Day of the first low and high.</summary>
    public string? From { get; init; }

    /// <summary>F or C.</summary>
    public string? Unit { get; init; }

    public IReadOnlyList<WrittenNumber>? Lows { get; init; }

    public IReadOnlyList<WrittenNumber>? Highs { get; init; }
}
