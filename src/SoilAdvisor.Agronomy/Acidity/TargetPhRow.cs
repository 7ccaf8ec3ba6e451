using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>One published row of target pH by crop group, soil and region.</summary>
/// <param name="CropGroup">The crop group as printed.</param>
/// <param name="Crops">Ids of the crops held here that it stands for; empty where none is, or where it stands for all others.</param>
/// <param name="AllOthers">True where it stands for every crop that no other row of its region names.</param>
/// <param name="SoilClass">The soil as printed.</param>
/// <param name="Soil">The soil it is for.</param>
/// <param name="Ph">What it says.</param>
/// <param name="Region">The region as printed.</param>
/// <param name="Regions">ISO 3166 codes; empty for general.</param>
/// <param name="Source">Where it stands.</param>
public sealed record TargetPhRow(
    string CropGroup,
    IReadOnlyList<string> Crops,
    bool AllOthers,
    string SoilClass,
    LimeSoil Soil,
    PublishedPh Ph,
    string Region,
    IReadOnlyList<string> Regions,
    Citation Source)
{
    /// <summary>True where it speaks of this soil.</summary>
    /// <param name="organic">True for muck and peat.</param>
    public bool Fits(bool organic) => Soil == LimeSoil.Any || (Soil == LimeSoil.Organic) == organic;
}
