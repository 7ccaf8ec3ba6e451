using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Nitrogen of a stand; the available part may be below zero, then the stand ties nitrogen up.</summary>
internal sealed record NitrogenAnswer(
    Quantity DryMatter,
    PercentRange NitrogenPercent,
    QuantityRange TotalNitrogen,
    QuantityRange PlantAvailableNitrogen,
    string Method,
    string Confidence,
    IReadOnlyList<WorkingLineAnswer>? Working,
    IReadOnlyList<Fault>? Refused,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions,
    CitedAs By) : Sourced(By), IRefusable;
