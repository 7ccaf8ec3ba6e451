using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using UnitsNet;

namespace SoilAdvisor.Planning;

/// <summary>What decides the lime of one soil. A plan and a question about lime alone ask the same.</summary>
/// <param name="Test">The soil test.</param>
/// <param name="Target">The target pH and what was assumed for it.</param>
/// <param name="TargetAsked">True when the request names the target pH itself.</param>
/// <param name="Method">Lime method asked for; null to choose by buffer, region and evidence.</param>
/// <param name="Region">ISO 3166-2 code; null when not known.</param>
/// <param name="Magnesium">Rating of magnesium by the farm's guide; null when it was not rated.</param>
/// <param name="Crops">Crops in order; empty when only a target pH is known.</param>
/// <param name="Offered">Liming materials at hand.</param>
public sealed record LimeAsked(
    SoilTest Test,
    TargetPhAnswer Target,
    bool TargetAsked,
    LimeMethod? Method,
    string? Region,
    Rating? Magnesium,
    IReadOnlyList<Crop> Crops,
    IReadOnlyList<OfferedMaterial> Offered)
{
    /// <summary>Depth that the lime is worked in; null for that of the method.</summary>
    public Length? Depth { get; init; }

    /// <summary>True when the lime stays on the surface.</summary>
    public bool OnSurface { get; init; }

    /// <summary>Lime spread lately.</summary>
    public IReadOnlyList<EarlierLime> Recent { get; init; } = [];

    /// <summary>Day of the first dose; null when not known.</summary>
    public DateOnly? Start { get; init; }

    /// <summary>Ground that is spread; null without a bed.</summary>
    public Area? Area { get; init; }

    /// <summary>Potash (K2O) that the bed needs; null when no need was computed.</summary>
    public MassPerArea? PotashNeed { get; init; }
}
