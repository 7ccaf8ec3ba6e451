using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>One figure of a published sulfur rule.</summary>
/// <param name="Rule">tennessee, extension, royal-horticultural-society or turf.</param>
/// <param name="Symbol">Kebab-case name of the figure.</param>
/// <param name="Value">The figure as printed.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it stands.</param>
public sealed record SulfurFigure(string Rule, string Symbol, decimal Value, string Unit, Citation Source);
