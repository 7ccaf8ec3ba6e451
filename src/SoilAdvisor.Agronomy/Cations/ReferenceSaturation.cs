using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>A range of saturation that a laboratory prints beside its results. Information: it rates nothing and asks for nothing.</summary>
/// <param name="Extractant">The extractant whose cations it was printed for.</param>
/// <param name="Cation">Ca, Mg or K.</param>
/// <param name="Low">Low end, percent of the exchange capacity, inclusive.</param>
/// <param name="High">High end, percent of the exchange capacity, inclusive.</param>
/// <param name="Source">Where it stands.</param>
public sealed record ReferenceSaturation(Extractant Extractant, Analyte Cation, decimal Low, decimal High, Citation Source);
