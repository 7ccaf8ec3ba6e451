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

    // Ceilings printed for a stand: legumes up to +100, cereals down to -50 lb of plant-available nitrogen an acre.
    private static readonly MassPerArea MostOfLegumes = MassPerArea.FromPoundsPerAcre(100);
    private static readonly MassPerArea LeastOfCereals = MassPerArea.FromPoundsPerAcre(-50);

    public static Cited<string>? Words(CoverCrop cover, Area? area)
    {
        if (cover.Family == "Poaceae")
        {
            return new($"If grown and killed then: young grass gives a little nitrogen; past jointing it ties nitrogen up: {Range(LeastOfCereals, default, area)}.", PacificNorthwest);
        }

        if (cover.Family == "Fabaceae" && Stand(cover) is { } stand)
        {
            return new($"If grown and killed then, in full stand with {CoverCropPhosphorus.Range(cover.ValueOf("nitrogen-percent")!)} % nitrogen: {Range(stand.Low, stand.High, area)}, most of it within four to six weeks.", PacificNorthwest);
        }

        return cover.Family == "Fabaceae"
            ? new($"If grown and killed then: at most {Range(MostOfLegumes, MostOfLegumes, area)}; how much depends on the stand. Cut and weigh a sample to know.", PacificNorthwest)
            : null;
    }

    private static (MassPerArea Low, MassPerArea High)? Stand(CoverCrop cover)
    {
        var (matter, content) = (cover.ValueOf("dry-matter"), cover.ValueOf("nitrogen-percent"));
        if ((matter?.Low ?? matter?.Value) is not { } matterLow || (content?.Low ?? content?.Value) is not { } percentLow)
        {
            return null;
        }

        var low = Credit(matterLow, percentLow);
        var high = Credit(matter!.High ?? matter.Value ?? matterLow, content!.High ?? content.Value ?? percentLow);
        return (low < MostOfLegumes ? low : MostOfLegumes, high < MostOfLegumes ? high : MostOfLegumes);
    }

    private static MassPerArea Credit(decimal dryMatter, decimal percent) =>
        CoverCropFormulas.NitrogenCredit.Of((
            MassPerArea.FromPoundsPerAcre((double)dryMatter),
            CoverCropFormulas.PlantAvailableNitrogen.Of(MassShare.FromPercent((double)percent)))).Amount;

    private static string Range(MassPerArea low, MassPerArea high, Area? area) =>
        $"{PlainNumber.Range(low.PoundsPerAcre, high.PoundsPerAcre)} lb of plant-available nitrogen an acre"
        + (area is { } ground ? $" ({PlainNumber.Range(low.On(ground).Pounds, high.On(ground).Pounds)} lb on this bed)" : "");
}
