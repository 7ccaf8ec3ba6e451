using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>What one published rule says for this soil.</summary>
/// <param name="Id">michigan-table, tennessee, extension or royal-horticultural-society.</param>
/// <param name="Title">Whose rule it is.</param>
/// <param name="Low">Elemental sulfur, low end; null where the rule does not reach this soil.</param>
/// <param name="High">High end; equal to the low end where one number is printed.</param>
/// <param name="FromPh">pH that the rate starts from, as printed.</param>
/// <param name="ToPh">pH that the rate goes to, as printed.</param>
/// <param name="Said">How it was read, or why it does not reach.</param>
/// <param name="Source">Where it stands.</param>
public sealed record SulfurRule(string Id, string Title, Rate<ElementalSulfur>? Low, Rate<ElementalSulfur>? High, decimal? FromPh, decimal? ToPh, string Said, Citation Source);
