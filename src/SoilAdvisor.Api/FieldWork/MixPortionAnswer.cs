using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>What one bed gets of a mix.</summary>
internal sealed record MixPortionAnswer(string Bed, Quantity Weight);
