using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>A published table from a pre-sidedress nitrate test to the nitrogen to sidedress, for one crop on manured or on unmanured soil.</summary>
/// <param name="Crop">Id of the crop.</param>
/// <param name="Manured">True for soil that was manured for this crop.</param>
/// <param name="Scale">Its printed spans of nitrate-N, which ask for the timing and the layer of the test.</param>
/// <param name="Rates">Nitrogen to sidedress, one for each class of the scale.</param>
/// <param name="Note">How the rate is given, in words; null for none.</param>
public sealed record SidedressTable(string Crop, bool Manured, RatingScale Scale, IReadOnlyList<MassPerArea> Rates, string? Note)
{
    /// <summary>Where it stands.</summary>
    public Citation Source => Scale.Classes[0].Source;
}
