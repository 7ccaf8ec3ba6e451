using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>What a harvest takes away, per unit of yield. Ca, Mg and S are elements; a missing figure is null, never zero.</summary>
/// <param name="Part">harvested or other (stays in the field).</param>
/// <param name="Basis">What the figure refers to, as printed.</param>
/// <param name="Unit">lb/ton, lb/cwt, lb/bu or kg/t.</param>
/// <param name="N">Nitrogen.</param>
/// <param name="P2O5">Phosphate.</param>
/// <param name="K2O">Potash.</param>
/// <param name="Ca">Calcium.</param>
/// <param name="Mg">Magnesium.</param>
/// <param name="S">Sulfur.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record Removal(string Part, string Basis, string Unit, decimal? N, decimal? P2O5, decimal? K2O, decimal? Ca, decimal? Mg, decimal? S, Citation Source, string? Note);
