using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>A limit on one material beside its largest single rate: by a certifier, by the grower, by metals or by salt.</summary>
/// <param name="Most">Most of it on one area in one plan, as it is spread; zero or more.</param>
/// <param name="Reason">Why, in words that follow "limited to …: ".</param>
/// <param name="Source">Where the limit stands.</param>
public sealed record RateCap(MassPerArea Most, string Reason, Citation Source);
