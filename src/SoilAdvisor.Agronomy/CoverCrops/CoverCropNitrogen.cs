using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>
/// Nitrogen "if grown and killed then": a range that may be below zero. It changes no need of the same plan; it becomes a credit once the
/// stand is entered under previous.
/// </summary>
internal static class CoverCropNitrogen
{
    private static readonly Citation PacificNorthwest = new("cc02", "highlights", Evidence.Seen);

    private static readonly MassPerArea MostOfLegumes = MassPerArea.FromPoundsPerAcre(100);

    public static Cited<string>? Words(CoverCrop cover, CoverCropNumbers numbers, Area? area)
    {
        if (numbers.Stages.Count == 0)
        {
            return cover.Family == CoverCrop.Legumes
                ? new($"If grown and killed then: at most {Range(MostOfLegumes, MostOfLegumes, area)}; how much depends on the stand. Cut and weigh a sample to know.", PacificNorthwest)
                : null;
        }

        var stages = string.Join("; ", numbers.Stages.Select(s => $"killed {CoverCropEstimates.StageWords(s.Stage)} {Range(s.Low.Available, s.High.Available, area)}{(s.AtLimit ? ", held at the printed limits of -50 and +100" : "")}"));
        var tiesUp = numbers.Stages.Any(s => s.Low.Available < default(MassPerArea)) ? " Below zero it ties nitrogen up." : "";
        return new($"If grown and killed then: {stages}. Most of it comes within four to six weeks.{tiesUp}", PacificNorthwest);
    }

    private static string Range(MassPerArea low, MassPerArea high, Area? area) =>
        $"{PlainNumber.Range(low.PoundsPerAcre, high.PoundsPerAcre)} lb of plant-available nitrogen an acre"
        + (area is { } ground ? $" ({PlainNumber.Range(low.On(ground).Pounds, high.On(ground).Pounds)} lb on this bed)" : "");
}
