using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Sampling;

/// <summary>Whether two results of one block differ in truth.</summary>
internal sealed record TestChangeAnswer(
    string Analyte,
    Quantity Before,
    Quantity After,
    Quantity Difference,
    Quantity StandardDeviation,
    Quantity SmallestProvable,
    bool Proved,
    Quantity Confidence,
    string Words,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    CitedAs By) : Sourced(By);
