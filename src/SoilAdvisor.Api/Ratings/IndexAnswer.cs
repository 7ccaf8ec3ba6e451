using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Ratings;

/// <summary>An index that the guide computes from several readings, on that index's own scale; or why there is none.</summary>
internal sealed record IndexAnswer(string Index, string Title, string About, string Formula, CitedAs By) : Sourced(By)
{
    public Quantity? Value { get; init; }

    /// <summary>The guide's printed name.</summary>
    public string? Class { get; init; }

    public string? Standing { get; init; }

    public ScaleAnswer? Scale { get; init; }

    public IReadOnlyList<AssumptionAnswer>? Assumptions { get; init; }

    public IReadOnlyList<WorkingLineAnswer>? Working { get; init; }

    public Fault? Refused { get; init; }
}
