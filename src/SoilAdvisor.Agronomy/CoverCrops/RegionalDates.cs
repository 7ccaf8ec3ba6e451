using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Dates printed for a region. They are never used for another one; there they are shown with their region.</summary>
/// <param name="CoverCrop">Id of the species.</param>
/// <param name="What">sow, end or plant-after.</param>
/// <param name="From">First day; month and day count.</param>
/// <param name="To">Last day; month and day count; null for open.</param>
/// <param name="Region">The region in words.</param>
/// <param name="Regions">ISO 3166-2 codes of it; empty where the print names none that has a code.</param>
/// <param name="Text">The dates as printed, in our words.</param>
/// <param name="Source">Where they stand.</param>
public sealed record RegionalDates(
    string CoverCrop, string What, (int Month, int Day) From, (int Month, int Day)? To, string Region, IReadOnlyList<string> Regions, string Text, Citation Source);
