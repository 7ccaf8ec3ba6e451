using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>
/// Days from working raw manure into the soil to the first harvest of a food crop: not less than 120 where the edible part touches soil, not
/// less than 90 where it does not (7 CFR 205.203(c)(1)). The interval follows the soil, so manure on a cover crop binds the vegetable after it.
/// </summary>
public static class RawManureInterval
{
    /// <summary>Days where the edible part touches soil or soil splashes.</summary>
    public const int ContactDays = 120;

    /// <summary>Days where it does not.</summary>
    public const int NoContactDays = 90;

    /// <summary>Days that a planting asks for; 0 for a crop that people do not eat.</summary>
    /// <param name="planting">The planting.</param>
    public static int DaysFor(Planting planting) => planting switch
    {
        { Crop.EdiblePart: "none" } => 0,
        _ => (planting.SoilContact ?? planting.Crop.SoilContact) == SoilContact.Contact ? ContactDays : NoContactDays,
    };

    /// <summary>First day on which the planting may be harvested.</summary>
    /// <param name="incorporated">Day the manure was worked in.</param>
    /// <param name="planting">The planting.</param>
    public static DateOnly EarliestHarvest(DateOnly incorporated, Planting planting) => incorporated.AddDays(DaysFor(planting));

    /// <summary>Whether the interval is met; null when the first harvest is not known.</summary>
    /// <param name="incorporated">Day the manure was worked in.</param>
    /// <param name="planting">The planting.</param>
    public static bool? IsMet(DateOnly incorporated, Planting planting) =>
        DaysFor(planting) == 0 ? true : planting.FirstHarvest is { } harvest ? harvest >= EarliestHarvest(incorporated, planting) : null;

    internal static (FindingState State, string Message, string? Record) Check(string manure, DateOnly? incorporated, Planting planting)
    {
        var days = DaysFor(planting);
        if (incorporated is not { } workedIn)
        {
            return (FindingState.NotDecidable, $"{manure}: the day it was worked in is not known. {days} days are asked from that day to the first harvest of {planting.Crop.Name}; manure left on top never meets the rule.", "date the manure was worked into the soil");
        }

        var earliest = EarliestHarvest(workedIn, planting);
        if (planting.FirstHarvest is not { } harvest)
        {
            return (FindingState.NotDecidable, $"{manure}, worked in on {PlainNumber.Date(workedIn)}: the first harvest of {planting.Crop.Name} is not known. It must not be before {PlainNumber.Date(earliest)} ({days} days).", "date of the first harvest");
        }

        if (harvest < workedIn)
        {
            return HarvestUnderWay(manure, workedIn, planting, days, earliest);
        }

        var passed = harvest.DayNumber - workedIn.DayNumber;
        return passed >= days
            ? (FindingState.Pass, $"{manure}, worked in on {PlainNumber.Date(workedIn)}: the first harvest of {planting.Crop.Name} on {PlainNumber.Date(harvest)} is {passed} days later; {days} are asked.", "dates of working in and of first harvest")
            : (FindingState.Act, $"{manure}, worked in on {PlainNumber.Date(workedIn)}: the first harvest of {planting.Crop.Name} on {PlainNumber.Date(harvest)} is only {passed} days later; {days} are asked. Harvest from {PlainNumber.Date(earliest)}, or compost the manure first.", "dates of working in and of first harvest");
    }

    // The crop was already being picked when the manure came: what counts is whether picking went on.
    private static (FindingState, string, string?) HarvestUnderWay(string manure, DateOnly workedIn, Planting planting, int days, DateOnly earliest) => planting.HarvestEnd switch
    {
        { } end when end < workedIn => (FindingState.Pass, $"{manure}, worked in on {PlainNumber.Date(workedIn)}: {planting.Crop.Name} was harvested before, by {PlainNumber.Date(end)}.", "dates of working in and of last harvest"),
        { } end => (FindingState.Act, $"{manure}, worked in on {PlainNumber.Date(workedIn)} while {planting.Crop.Name} was being harvested, to {PlainNumber.Date(end)}: {days} days are asked. Stop harvesting until {PlainNumber.Date(earliest)} and call the certifier.", "dates of working in and of last harvest"),
        null => (FindingState.NotDecidable, $"{manure}, worked in on {PlainNumber.Date(workedIn)}, after the first harvest of {planting.Crop.Name}: its last harvest is not known. Nothing may be harvested before {PlainNumber.Date(earliest)} ({days} days).", "date of the last harvest"),
    };
}
