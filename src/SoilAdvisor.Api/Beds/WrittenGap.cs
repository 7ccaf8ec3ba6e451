namespace SoilAdvisor.Api.Beds;

/// <summary>A time that a bed stands free, as received.</summary>
internal sealed record WrittenGap
{
    public string? From { get; init; }

    public string? To { get; init; }
}
