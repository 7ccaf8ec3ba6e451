using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Climate;

/// <summary>Twelve monthly temperatures, January first, as received.</summary>
internal sealed record WrittenMonths
{
    /// <summary>F or C.</summary>
    public string? Unit { get; init; }

    public IReadOnlyList<WrittenNumber>? Values { get; init; }
}
