using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>One symbol from a first to a last number, in equal steps.</summary>
internal sealed record WrittenVariation
{
    public string? Symbol { get; init; }

    public WrittenNumber? From { get; init; }

    public WrittenNumber? To { get; init; }

    /// <summary>How many numbers, both ends counted.</summary>
    public WrittenNumber? Steps { get; init; }
}
