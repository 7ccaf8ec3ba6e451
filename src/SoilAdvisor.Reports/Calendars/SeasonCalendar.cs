using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Calendars;

/// <summary>A season of cover crops as iCalendar (RFC 5545): one whole-day event for each sowing, mowing, ending and planting.</summary>
public static class SeasonCalendar
{
    private const string Product = "-//SoilAdvisor//Cover crop season//EN";

    /// <summary>Writes the calendar. The same season and day give the same text; an event keeps its UID while bed, gap and work stay, also when its day moves.</summary>
    /// <param name="season">The season.</param>
    /// <param name="farm">Name as given; null when none was. It is part of the UID, so that two farms never share an event.</param>
    /// <param name="made">Day the season was planned on; it stamps every event, no clock does.</param>
    public static string Write(CoverCropSeason season, string? farm, DateOnly made)
    {
        var calendar = new Ical.Net.Calendar { ProductId = Product };
        foreach (var stand in season.Stands)
        {
            foreach (var task in stand.Tasks)
            {
                calendar.Events.Add(Event(stand, task, farm, made));
            }
        }

        return new CalendarSerializer().SerializeToString(calendar) ?? "";
    }

    private static CalendarEvent Event(SeasonStand stand, SeasonTask task, string? farm, DateOnly made) => new()
    {
        Uid = Uid(farm, stand, task.Work),
        DtStamp = new CalDateTime(made.Year, made.Month, made.Day, 0, 0, 0, CalDateTime.UtcTzId),
        Start = new CalDateTime(task.Day),
        End = new CalDateTime(task.Day.AddDays(1)),
        Summary = SafeText.Of($"{Word(task.Work)}: bed {stand.Gap.Bed}{(stand.Choice is { } choice && task.Work != SeasonWork.Plant ? $", {choice.CoverCrop.Name}" : "")}"),
        Description = SafeText.Of(task.Text),
        Transparency = "TRANSPARENT",
    };

    private static string Word(SeasonWork work) => work switch
    {
        SeasonWork.Sow => "Sow",
        SeasonWork.Mow => "Mow",
        SeasonWork.Kill => "End",
        _ => "Plant",
    };

    // A version 8 UUID (RFC 9562) from what names the event; the day is no part of it.
    private static string Uid(string? farm, SeasonStand stand, SeasonWork work)
    {
        var name = string.Join('\n', [farm ?? "", stand.Gap.Bed, stand.Gap.Selection.Gap.From.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), work.ToString()]);
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes(name))[..16];
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true).ToString();
    }
}
