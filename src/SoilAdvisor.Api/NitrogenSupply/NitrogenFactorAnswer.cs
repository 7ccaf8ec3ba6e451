using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>With what share the nitrogen of a material is counted, and what others print.</summary>
internal sealed record NitrogenFactorAnswer(string Material, string Name, SaidAnswer Used, IReadOnlyList<SaidAnswer> Beside);
