using System.Globalization;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>
/// Phosphate that a cover crop takes up and gives back. It is moved, not added: no need of the bed is lowered by it, and no cover crop is a
/// phosphorus source.
/// </summary>
public static class CoverCropPhosphorus
{
    private static readonly Citation NoRelease = new("cc29", null, Evidence.Seen);
    private static readonly Citation Review = new("cc30", null, Evidence.Seen);

    /// <summary>Phosphate held in a stand: P2O5 = DM × p / 100 × (2 × 30.973762 + 5 × 15.999) / (2 × 30.973762).</summary>
    public static Formula<(MassPerArea DryMatter, MassShare Phosphorus), Rate<TotalP2O5>> InStand { get; } = new(
        "cover-crop-phosphate",
        "Phosphate that a cover crop takes up and returns",
        "P2O5 = DM × p / 100 × (2 × 30.973762 + 5 × 15.999) / (2 × 30.973762)",
        Citation.AtomicMasses,
        [
            new(new Symbol("DM", "dry matter above ground", "lb/acre", 0), x => x.DryMatter.PoundsPerAcre),
            new(new Symbol("p", "phosphorus (P) in the dry matter", "%", 0, 100), x => x.Phosphorus.Percent),
        ],
        new(new Symbol("P2O5", "phosphate in the stand", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1])),
        x => new Rate<TotalP2O5>(x.DryMatter * (x.Phosphorus.Percent / 100 * OxideConversions.PhosphateOfPhosphorus)),
        "Published examples print phosphorus in stands as the element; the oxide factor is checked on its own.");

    internal static Cited<string>? Words(CoverCrop cover, Area? area, bool phosphorusShort, MassPerArea? shortBy)
    {
        var dryMatter = cover.ValueOf("dry-matter");
        var threshold = cover.ValueOf("phosphorus-release-threshold");
        var measured = cover.ValueOf("phosphorus-percent");
        if ((measured ?? threshold) is not { } content || dryMatter is null
            || (content.Value ?? content.Low) is not { } percentLow || (dryMatter.Low ?? dryMatter.Value) is not { } matterLow)
        {
            return null;
        }

        var low = Held(matterLow, percentLow);
        var high = Held(dryMatter.High ?? dryMatter.Value ?? matterLow, content.High ?? content.Value ?? percentLow);
        var bed = area is { } ground ? $" ({PlainNumber.Range(low.Amount.On(ground).Pounds, high.Amount.On(ground).Pounds)} lb on this bed)" : "";
        var text = $"A stand of {Range(dryMatter)} {dryMatter.Unit} of dry matter {(measured is null ? $"at {Range(content)} % phosphorus (where one trial found release to begin; no measured content is held)" : $"with {Range(content)} % phosphorus")} takes up and returns about {PlainNumber.Range(low.PoundsPerAcre, high.PoundsPerAcre)} lb of P2O5 an acre{bed}: moved, not added.";
        if (phosphorusShort)
        {
            text += shortBy is { } missing && missing > default(MassPerArea)
                ? $" The bed is short {PlainNumber.Of(missing.PoundsPerAcre)} lb of P2O5 an acre; no cover crop makes that up."
                : " The bed is short of phosphorus; no cover crop makes that up.";
        }

        if (threshold is not null)
        {
            text += $" Trials disagree on whether the next crop gains: at or below {Range(threshold)} % phosphorus no release was found.";
        }

        return new Cited<string>(text, content.Source);
    }

    internal static IEnumerable<CoverCropReason> Doubts(CoverCrop cover)
    {
        if (cover.ValueOf("phosphorus-release-threshold") is not null)
        {
            yield return new("Trials disagree on its phosphorus: a review finds most gain on soils low in phosphorus.", 0, Review);
            yield return new("One field trial judged the gain too small to matter, on a soil low in phosphorus.", -1, NoRelease);
        }
    }

    private static Rate<TotalP2O5> Held(decimal dryMatter, decimal percent) =>
        InStand.Of((MassPerArea.FromPoundsPerAcre((double)dryMatter), MassShare.FromPercent((double)percent)));

    internal static string Range(CoverCropValue value)
    {
        var (low, high) = (value.Low ?? value.Value, value.High ?? value.Value);
        return low == high || high is null || low is null
            ? string.Create(CultureInfo.InvariantCulture, $"{low ?? high:#,0.######}")
            : string.Create(CultureInfo.InvariantCulture, $"{low:#,0.######} to {high:#,0.######}");
    }
}
