using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Sampling;

/// <summary>Two results of one block as one; where they may not be, why not.</summary>
internal sealed record PooledAnswer(
    string Analyte,
    Quantity? Value,
    Quantity? Spread,
    Fault? Refused,
    CitedAs By) : Sourced(By);
