using SoilAdvisor.Agronomy.Acidity.Stones;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>
/// What a label or a laboratory says of a material. It overrides the tables; a figure left out keeps the table's. All figures are percent
/// by mass, 0 to 100.
/// </summary>
/// <param name="N">Total nitrogen, % N.</param>
/// <param name="P2O5">Phosphate, % P2O5: total, unless it lies where labels of this material guarantee the available part.</param>
/// <param name="K2O">Potash, % K2O.</param>
/// <param name="Moisture">Water, % of the material as it is spread; below 100.</param>
/// <param name="Dry">True when the figures refer to dry matter; they are then multiplied by (1 − moisture).</param>
public sealed record GrowerAnalysis(decimal? N, decimal? P2O5, decimal? K2O, decimal? Moisture, bool Dry)
{
    /// <summary>What is said of it as a liming material; null for nothing.</summary>
    public StoneLabel? Stone { get; init; }
}
