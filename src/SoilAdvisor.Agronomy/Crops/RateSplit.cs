using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>One printed part of a season's rate: how much of it, and when.</summary>
/// <param name="Crop">Crop id.</param>
/// <param name="Nutrient">The nutrient.</param>
/// <param name="Order">From 1.</param>
/// <param name="Rate">How much; null where the guide prints only the time.</param>
/// <param name="When">When, in the guide's sense and our words.</param>
/// <param name="Source">Where it stands.</param>
public sealed record RateSplit(string Crop, PlantNutrient Nutrient, int Order, RateRange? Rate, string When, Citation Source)
{
    /// <summary>Whether it is given before or at planting, or beside the growing crop.</summary>
    public DressingTime Time { get; init; } = Order == 1 ? DressingTime.Base : DressingTime.Sidedress;

    /// <summary>First and last week after planting; null where the guide names a stage or a day instead.</summary>
    public (decimal From, decimal To)? Weeks { get; init; }

    /// <summary>Month and day of the year; null where none is printed.</summary>
    public (int Month, int Day)? Day { get; init; }
}
