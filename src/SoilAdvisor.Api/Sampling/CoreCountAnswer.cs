using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Sampling;

/// <summary>Cores to take for a wanted precision.</summary>
internal sealed record CoreCountAnswer(
    string? Analyte,
    int Cores,
    int IfVariationIsKnown,
    Quantity Precision,
    Quantity Confidence,
    Quantity Cv,
    string Words,
    CitedAs By) : Sourced(By);
