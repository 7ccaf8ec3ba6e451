using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops.Biomass;

/// <summary>Nitrogen in the dry matter of a stand.</summary>
/// <param name="Low">Low end.</param>
/// <param name="High">High end; the low end where one number is known.</param>
/// <param name="IsMeasured">True when it was measured; false for a published figure.</param>
/// <param name="From">Where it comes from.</param>
public sealed record NitrogenContent(MassShare Low, MassShare High, bool IsMeasured, Origin From)
{
    /// <summary>Stages that a published figure may be held for.</summary>
    public static IReadOnlyList<string> Stages { get; } = ["before-flowering", "flowering", "mature"];

    /// <summary>The published figure of a species, else of its kind of plant at a stage, with what is said about it; null when none is held.</summary>
    /// <param name="cover">The species; null for a mixture, of which nothing is published.</param>
    /// <param name="stage">One of <see cref="Stages"/>; null when not said.</param>
    /// <param name="tables">What is published on cover crops.</param>
    public static (NitrogenContent Content, Assumption Said)? Published(CoverCrop? cover, string? stage, CoverCropTables tables)
    {
        if (cover is null)
        {
            return null;
        }

        if (cover.ValueOf("nitrogen-percent") is { Least: { } low, Most: { } high } own)
        {
            return (Of(low, high, own.Source), new Assumption("nitrogen-percent-published", $"Nitrogen was not measured: the published figure of {cover.Name} is taken.", own.Source));
        }

        return tables.StageNitrogen.FirstOrDefault(s => s.PlantType == CoverCropEstimates.PlantType(cover) && s.Stage == stage) is { } usual
            ? (Of(usual.PercentLow, usual.PercentHigh, usual.Source), new Assumption("nitrogen-percent-by-stage", $"Nitrogen was not measured: what is usual for plants of its kind {CoverCropEstimates.StageWords(usual.Stage)} is taken for {cover.Name}.", usual.Source))
            : null;
    }

    private static NitrogenContent Of(decimal low, decimal high, Citation source) =>
        new(MassShare.FromPercent((double)low), MassShare.FromPercent((double)high), false, Origin.From(source));
}
