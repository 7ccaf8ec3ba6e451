using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>One printed cell of a lime table. Exactly one of buffer pH, acidity and soil pH is given: the one its method reads.</summary>
/// <param name="BufferPh">Buffer pH as printed; null for another reading.</param>
/// <param name="Acidity">Exchangeable acidity as printed, meq/100 g; null for another reading.</param>
/// <param name="SoilPh">Soil pH as printed, on the scale of the method; null for another reading.</param>
/// <param name="Soils">Texture groups it holds for; empty for all.</param>
/// <param name="TargetPh">Target pH as printed; null where the publication prints none.</param>
/// <param name="Rate">Rate in the method's unit.</param>
/// <param name="Source">Where it stands.</param>
public sealed record LimeCell(decimal? BufferPh, decimal? Acidity, decimal? SoilPh, IReadOnlyList<SoilGroup> Soils, decimal? TargetPh, decimal Rate, Citation Source)
{
    /// <summary>The value that the row is printed for.</summary>
    public decimal Row => BufferPh ?? Acidity ?? SoilPh ?? throw new InvalidOperationException("A cell without a row cannot be looked up; the loader refuses it.");
}
