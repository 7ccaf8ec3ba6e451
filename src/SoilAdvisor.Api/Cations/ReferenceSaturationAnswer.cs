using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Cations;

/// <summary>A printed range of saturation, percent, ends included. It rates nothing.</summary>
internal sealed record ReferenceSaturationAnswer(decimal Low, decimal High, CitedAs By) : Sourced(By);
