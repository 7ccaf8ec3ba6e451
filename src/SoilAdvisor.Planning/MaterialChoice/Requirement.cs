using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>What materials must supply of one nutrient, at least and at most, after credits, lime and what was spread already.</summary>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="PlantingIndex">The planting whose spreading counts; null for the whole season.</param>
/// <param name="Floor">At least this; never negative; null for none.</param>
/// <param name="Ceiling">At most this; not below the floor of the same row; null for none.</param>
/// <param name="CeilingReason">Why there is a ceiling; null without one.</param>
internal sealed record Requirement(Nutrient Nutrient, int? PlantingIndex, MassPerArea? Floor, MassPerArea? Ceiling, string? CeilingReason)
{
    /// <summary>A thousandth of a pound per acre: a floor below it is rounding, not a need.</summary>
    public const double RoundingPoundsPerAcre = 1e-3;

    /// <summary>True when there is a floor above rounding.</summary>
    public bool AsksForSomething => Floor is { } floor && floor.PoundsPerAcre > RoundingPoundsPerAcre;

    /// <summary>Whether spreading for a planting counts here.</summary>
    /// <param name="planting">The planting.</param>
    public bool Counts(int planting) => PlantingIndex is null || PlantingIndex == planting;
}
