using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>One dressing: how much nitrogen the guide wants then, and which material gives it.</summary>
/// <param name="Time">Before or at planting, beside the crop, or through the season.</param>
/// <param name="When">The guide's time in words.</param>
/// <param name="From">First day; null where the guide names a stage, or the planting date is not known.</param>
/// <param name="To">Last day; null likewise.</param>
/// <param name="Wanted">The guide's part of the rate, before credits.</param>
/// <param name="Parts">Which materials give it; empty where credits or the base dressing cover it.</param>
/// <param name="Source">Where the split stands.</param>
public sealed record NitrogenDressing(
    DressingTime Time,
    string When,
    DateOnly? From,
    DateOnly? To,
    RateRange Wanted,
    IReadOnlyList<DressingPart> Parts,
    Citation Source);
