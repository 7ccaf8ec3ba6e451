using System.Globalization;
using SoilAdvisor.Agronomy.Acidity.Stones;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>When a later dose of lime is due.</summary>
internal static class LaterDose
{
    public static string When(LimeDose dose) => (dose.Date, dose.MonthsFrom, dose.MonthsTo) switch
    {
        ({ } day, _, _) => string.Create(CultureInfo.InvariantCulture, $"from {day:d MMMM yyyy}"),
        (null, null, _) => "after a new soil test",
        (null, 0, _) => "worked into the surface after the first was plowed down",
        (null, { } from, { } to) when from != to => string.Create(CultureInfo.InvariantCulture, $"{from} to {to} months after the first"),
        (null, { } from, _) => string.Create(CultureInfo.InvariantCulture, $"{from} months after the first"),
    };
}
