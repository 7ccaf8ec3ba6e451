using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>One material of a mix.</summary>
internal sealed record MixPartAnswer(string Material, string Name, Quantity Weight);
