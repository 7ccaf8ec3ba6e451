using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>The published weight of a volume of a material as it is spread.</summary>
/// <param name="Density">Mass for each volume; above zero.</param>
/// <param name="Source">Where it stands.</param>
public sealed record BulkDensity(Density Density, Citation Source)
{
    /// <summary>What a volume of it weighs.</summary>
    /// <param name="volume">The volume, level full.</param>
    public Mass MassOf(Volume volume) => Mass.FromKilograms(Density.KilogramsPerCubicMeter * volume.CubicMeters);
}
