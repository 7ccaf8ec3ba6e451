using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>How much neutralising value a bed needs, before any stone is chosen.</summary>
/// <param name="Method">Id of the method; "laboratory" for a rate that the laboratory printed; "none-needed" at or above the target.</param>
/// <param name="Lime">The requirement with what it counts; none at or above target. Stone is reckoned from this.</param>
/// <param name="PrintedValue">The method's own answer in its own unit.</param>
/// <param name="PrintedUnit">That unit.</param>
/// <param name="Basis">What that unit counts.</param>
/// <param name="Depth">Depth it is for.</param>
/// <param name="Target">The target pH.</param>
/// <param name="SoilPh">The soil pH it started from.</param>
/// <param name="Assumptions">What was assumed.</param>
/// <param name="Source">Where the method stands.</param>
public sealed record LimeRequirement(
    string Method,
    LimeAmount Lime,
    decimal PrintedValue,
    string PrintedUnit,
    string Basis,
    Length Depth,
    TargetPh Target,
    decimal SoilPh,
    IReadOnlyList<Assumption> Assumptions,
    Citation Source)
{
    /// <summary>The same as pure, fine calcium carbonate: what all materials together may bring. Not for choosing stone, see <see cref="Lime"/>.</summary>
    public Rate<CalciumCarbonate> Rate => new(Lime.AsPureLime);
}
