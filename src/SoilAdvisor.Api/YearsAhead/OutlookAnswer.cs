using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>One nutrient over the years, or why it is not projected. Rates count P2O5 in all forms, or K2O.</summary>
internal sealed record OutlookAnswer(CitedAs By) : Sourced(By)
{
    public string? Unit { get; init; }

    public string? Extractant { get; init; }

    public string? Standing { get; init; }

    public TargetSpanAnswer? Target { get; init; }

    /// <summary>Spread each year.</summary>
    public Quantity? Applied { get; init; }

    /// <summary>Spread once: since the sample, and with the lime.</summary>
    public Quantity? Once { get; init; }

    /// <summary>Taken away by the harvests each year.</summary>
    public Quantity? Removed { get; init; }

    public IReadOnlyList<YearAnswer> Years { get; init; } = [];

    public ReachesAnswer? Reaches { get; init; }

    public IReadOnlyList<SaidAnswer> Words { get; init; } = [];

    public Fault? Refused { get; init; }
}
