using SoilAdvisor.Agronomy.Materials;
using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>An amount as a person measures it.</summary>
/// <param name="Planned">What the plan asks for.</param>
/// <param name="Measured">What is measured out.</param>
/// <param name="How">By bucket and scoop, to a mark of the scale, or exactly because no mark will do.</param>
/// <param name="HalfBuckets">Half buckets, level; 0 where it is weighed.</param>
/// <param name="QuarterScoops">Quarter scoops, level; 0 where it is weighed.</param>
/// <param name="Density">The published density that the buckets rest on; null where it is weighed.</param>
public sealed record MeasuredAmount(Mass Planned, Mass Measured, MeasuringWay How, int HalfBuckets, int QuarterScoops, BulkDensity? Density)
{
    /// <summary>What rounding changed, as a share of the planned amount: 0.02 for two percent more.</summary>
    public double Change => Planned.Kilograms > 0 ? (Measured.Kilograms / Planned.Kilograms) - 1 : 0;
}
