using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.LabFiles;

/// <summary>The samples that could be read, in the form that every other address takes, and what could not be read.</summary>
internal sealed record LabFileAnswer(
    IReadOnlyList<WrittenSoilTest> SoilTests,
    IReadOnlyList<Fault> Errors,
    IReadOnlyList<SuspicionAnswer>? Suspicions,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions);
