namespace SoilAdvisor.Api.Beds;

/// <summary>Usual frost dates, as received; the year does not count.</summary>
internal sealed record WrittenFrost
{
    public string? LastSpring { get; init; }

    public string? FirstFall { get; init; }
}
