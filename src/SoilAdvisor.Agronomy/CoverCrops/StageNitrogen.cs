using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Nitrogen of a recommended stand if it is grown and killed at a stage.</summary>
/// <param name="Stage">before-flowering, flowering, mature or not-stated.</param>
/// <param name="PercentLow">Nitrogen in the dry matter, low end.</param>
/// <param name="PercentHigh">High end.</param>
/// <param name="Low">With the least dry matter and nitrogen; both ends held at the printed limits of a stand.</param>
/// <param name="High">The other end.</param>
/// <param name="AtLimit">True when an end was held at a printed limit.</param>
/// <param name="Basis">Where the %N comes from, in words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record StageNitrogen(
    string Stage, MassShare PercentLow, MassShare PercentHigh, StandNitrogen Low, StandNitrogen High, bool AtLimit, string Basis, Citation Source);
