using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Soil pH above which laboratories leave the buffer out: a missing value is then normal, no fault of the report.</summary>
internal static class LimeThresholds
{
    // Minnesota (umn-lime) and Georgia (sera6-fs3) measure below 6.0; an Ontario specialist names 6.2 (ont-topcrop).
    private const decimal MinnesotaAndGeorgia = 6.0m;
    private const decimal Ontario = 6.2m;

    public static string Note(decimal ph) => ph switch
    {
        >= Ontario => Invariant($"At pH {ph} that is normal: Minnesota and Georgia measure it only below {MinnesotaAndGeorgia}, Ontario below {Ontario}. Little lime is needed."),
        >= MinnesotaAndGeorgia => Invariant($"At pH {ph} that is normal in some places: Minnesota and Georgia measure it only below {MinnesotaAndGeorgia}. Little lime is needed."),
        _ => "",
    };
}
