using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>The one check that the plan proposes.</summary>
internal sealed record ProposedCheckAnswer(string Check, string Bed, string What, string Why, string? From, string? To, CitedAs By) : Sourced(By);
