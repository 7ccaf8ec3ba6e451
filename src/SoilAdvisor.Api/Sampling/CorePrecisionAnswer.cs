using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Sampling;

/// <summary>How near a number of cores comes.</summary>
internal sealed record CorePrecisionAnswer(
    string? Analyte,
    int Cores,
    Quantity Precision,
    Quantity Confidence,
    Quantity Cv,
    string Words,
    CitedAs By) : Sourced(By);
