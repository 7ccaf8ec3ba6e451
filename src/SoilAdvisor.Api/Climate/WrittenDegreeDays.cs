using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Climate;

/// <summary>How degree-days are counted, as received; left out, above 32 °F by the mean of low and high, without cut-off.</summary>
internal sealed record WrittenDegreeDays
{
    /// <summary>Temperature from which growth counts, F or C.</summary>
    public WrittenQuantity? Base { get; init; }

    /// <summary>Temperature above which a day counts no more; left out, none.</summary>
    public WrittenQuantity? CutOff { get; init; }

    /// <summary>daily-mean, extremes-raised or single-sine.</summary>
    public string? Method { get; init; }
}
