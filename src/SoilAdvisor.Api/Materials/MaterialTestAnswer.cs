using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Materials;

/// <summary>What a test of a material means for spreading it, beside its nutrients.</summary>
internal sealed record MaterialTestAnswer(string Material, string Subject, string Found, string Text, bool Forbids, CitedAs By) : Sourced(By);
