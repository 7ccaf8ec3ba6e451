using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Federal termination guidance: only for cropland that is said not to be irrigated.</summary>
internal static class TerminationRules
{
    private const string Caution = "It concerns crop insurance, is guidance, and was read in the editions of 2013 and 2014: check the edition in force with your insurance agent or the Natural Resources Conservation Service.";

    public static TerminationGuidance? For(CoverCropQuestion question, IReadOnlyList<TerminationZone> zones)
    {
        if (question.Irrigated != false || zones.Count == 0)
        {
            return null;
        }

        if (zones.FirstOrDefault(z => z.Zone == question.TerminationZone) is not { } zone)
        {
            return new TerminationGuidance(null, null, $"If the next crop is insured, federal guidance says by zone when a cover crop on ground that is not irrigated must be ended: {string.Join("; ", zones.Select(z => $"zone {z.Zone}: {z.Text}"))}. Give terminationZone for the day. {Caution}", zones[0].Source);
        }

        var endBy = question.Gap.To.AddDays(zone.DaysFromPlanting);
        return new TerminationGuidance(zone.Zone, endBy, $"If the next crop is insured and planted on {PlainNumber.Date(question.Gap.To)}, federal guidance for zone {zone.Zone} asks to end the cover crop {zone.Text}: by {PlainNumber.Date(endBy)}. {Caution}", zone.Source);
    }
}
