using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A published line from one method to another, or a published warning that there is none (verdict "convert" or "refuse").</summary>
internal sealed record MethodConversionEntry(
    string Id,
    string Analyte,
    string From,
    string To,
    string Verdict,
    decimal? Slope,
    decimal? Intercept,
    string? Unit,
    decimal? Lower,
    decimal? Upper,
    decimal? RSquared,
    decimal? Error,
    bool? ErrorIsOurs,
    decimal? HighestPh,
    string SampleSet,
    string Validity,
    string? Reason,
    string? Disagreement,
    CitedAs By) : Sourced(By);
