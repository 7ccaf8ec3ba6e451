using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>One published figure of how a soil test moves.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Nutrient">P2O5 or K2O: what is spread or removed.</param>
/// <param name="Extractant">The extractant it is used for; null only for information.</param>
/// <param name="PrintedFor">The extractant it was printed for; null where none is printed.</param>
/// <param name="Use">What it is used for.</param>
/// <param name="Value">Pounds per acre for one mg/kg; at an exchange capacity of zero where <paramref name="PerCec"/> stands.</param>
/// <param name="PerCec">Its rise for each meq/100 g of exchange capacity; null for none.</param>
/// <param name="BandFactor">Four soils in five are taken to lie between the figure divided and multiplied by this; 1 or more.</param>
/// <param name="Low">Low end of what is printed; null for none.</param>
/// <param name="High">High end of what is printed; null for none.</param>
/// <param name="Unit">Unit of the figures, as in the table; null without figures.</param>
/// <param name="Regions">ISO 3166-2 codes it was printed for; empty where none is named.</param>
/// <param name="Text">What it says, in a sentence; null for what is calculated with.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">What was read, and why it is used as it is.</param>
public sealed record PublishedMovement(
    string Id,
    PlantNutrient Nutrient,
    Extractant? Extractant,
    Extractant? PrintedFor,
    MovementUse Use,
    decimal? Value,
    decimal? PerCec,
    decimal? BandFactor,
    decimal? Low,
    decimal? High,
    string? Unit,
    IReadOnlyList<string> Regions,
    string? Text,
    Citation Source,
    string? Note);
