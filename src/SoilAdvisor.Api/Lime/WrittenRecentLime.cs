namespace SoilAdvisor.Api.Lime;

/// <summary>Lime spread lately, as received.</summary>
internal sealed record WrittenRecentLime
{
    public string? Date { get; init; }
}
