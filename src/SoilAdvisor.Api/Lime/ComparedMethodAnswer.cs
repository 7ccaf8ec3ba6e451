using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Lime;

/// <summary>One method beside others: its requirement, or why it gives none.</summary>
internal sealed record ComparedMethodAnswer(
    string Method, string Title, string Institution, IReadOnlyList<string> Region, string Basis, RequirementAnswer? Requirement, Fault? Refused, CitedAs By) : Sourced(By);
