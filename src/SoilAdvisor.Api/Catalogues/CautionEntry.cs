using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A warning for the reader who acts.</summary>
internal sealed record CautionEntry(string Id, string Text, CitedAs By) : Sourced(By);
