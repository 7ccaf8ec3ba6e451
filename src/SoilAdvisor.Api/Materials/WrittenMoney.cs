using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>An amount of money, as received.</summary>
internal sealed record WrittenMoney
{
    public WrittenNumber? Value { get; init; }

    /// <summary>ISO 4217, for example USD.</summary>
    public string? Currency { get; init; }
}
