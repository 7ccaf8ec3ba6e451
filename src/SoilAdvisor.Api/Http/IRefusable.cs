namespace SoilAdvisor.Api.Http;

/// <summary>An answer that may hold refusals beside its results.</summary>
internal interface IRefusable
{
    /// <summary>What could not be answered; left out when everything could.</summary>
    IReadOnlyList<Fault>? Refused { get; }
}
