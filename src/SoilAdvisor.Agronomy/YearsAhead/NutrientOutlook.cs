using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>Where one nutrient of a bed is heading when this season's plan and crops repeat.</summary>
/// <param name="Nutrient">P2O5 or K2O.</param>
/// <param name="Standing">Where the test stands today.</param>
/// <param name="Projection">The test of later years.</param>
/// <param name="TargetFrom">Where the guide's target begins, mg/kg; null where it is open below or the guide names none.</param>
/// <param name="TargetTo">Where it ends, mg/kg; null where it is open above or the guide names none.</param>
/// <param name="Applied">Spread each year, the middle of the analyses.</param>
/// <param name="Once">Spread once: since the sample, and with the lime.</param>
/// <param name="Removed">Taken away each year.</param>
/// <param name="Reaches">The limit that matters and when it is reached; null where none does.</param>
/// <param name="Words">What it means, sentence by sentence, each with its source.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record NutrientOutlook(
    PlantNutrient Nutrient,
    Standing Standing,
    Projection Projection,
    SoilConcentration? TargetFrom,
    SoilConcentration? TargetTo,
    MassPerArea Applied,
    MassPerArea Once,
    MassPerArea Removed,
    ReachedLevel? Reaches,
    IReadOnlyList<Cited<string>> Words,
    IReadOnlyList<Assumption> Assumptions);
