using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>The ground that is limed, as far as it decides stone and dose.</summary>
/// <param name="Tables">Published indexes, limits and figures.</param>
/// <param name="Magnesium">What the magnesium test says.</param>
/// <param name="Crops">Crops of the bed in order; empty when only a target pH is known.</param>
/// <param name="SoilGroup">Texture; null when not said.</param>
/// <param name="Region">ISO 3166-2 code; null when not known.</param>
/// <param name="OnSurface">True where the lime is not worked in.</param>
/// <param name="Start">Day of the first dose; null when not known.</param>
/// <param name="Area">Ground that is spread; null without a bed.</param>
/// <param name="PotashNeed">Potash (K2O) that the bed needs, which ash may bring at most; null when no need was computed.</param>
public sealed record LimeGround(
    LimingTables Tables,
    MagnesiumTest Magnesium,
    IReadOnlyList<Crop> Crops,
    SoilGroup? SoilGroup,
    string? Region,
    bool OnSurface,
    DateOnly? Start,
    Area? Area,
    MassPerArea? PotashNeed);
