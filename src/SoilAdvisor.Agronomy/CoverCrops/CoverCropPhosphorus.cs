using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>
/// Phosphate and potash that a cover crop takes up and gives back. They are moved, not added: no need of the bed is lowered by it, and no cover crop is
/// a source of phosphorus.
/// </summary>
public static class CoverCropPhosphorus
{
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

    /// <summary>Potash held in a stand: K2O = DM × k / 100 × (2 × 39.0983 + 15.999) / (2 × 39.0983).</summary>
    public static Formula<(MassPerArea DryMatter, MassShare Potassium), Rate<K2O>> PotashInStand { get; } = new(
        "cover-crop-potash",
        "Potash that a cover crop takes up and returns",
        "K2O = DM × k / 100 × (2 × 39.0983 + 15.999) / (2 × 39.0983)",
        Citation.AtomicMasses,
        [
            new(new Symbol("DM", "dry matter above ground", "lb/acre", 0), x => x.DryMatter.PoundsPerAcre),
            new(new Symbol("k", "potassium (K) in the dry matter", "%", 0, 100), x => x.Potassium.Percent),
        ],
        new(new Symbol("K2O", "potash in the stand", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1])),
        x => new Rate<K2O>(x.DryMatter * (x.Potassium.Percent / 100 * OxideConversions.PotashOfPotassium)),
        "Published examples print potassium in stands as the element; the oxide factor is checked on its own.");

    /// <summary>Phosphate by the uptake that was measured, else by the content of the dry matter; null where neither is held.</summary>
    internal static CoverCropRange? Phosphate(CoverCrop cover, CoverCropRange? matter)
    {
        if (cover.ValueOf("phosphorus-uptake") is { Least: { } low, Most: { } high } uptake)
        {
            return new CoverCropRange(
                OxideConversions.PhosphorusToPhosphate.Of(Uptake(low)).Amount, OxideConversions.PhosphorusToPhosphate.Of(Uptake(high)).Amount, $"measured uptake of {uptake.Shown} kg of phosphorus a hectare ({uptake.Note})", uptake.Source);
        }

        var measured = cover.ValueOf("phosphorus-percent");
        return matter is not null && (measured ?? cover.ValueOf("phosphorus-release-threshold")) is { Least: { } from, Most: { } to } content
            ? new CoverCropRange(
                InStand.Of((matter.Low, Percent(from))).Amount,
                InStand.Of((matter.High, Percent(to))).Amount,
                measured is null ? $"{content.Shown} % phosphorus, where one trial found release to begin; no measured content is held" : $"{content.Shown} % phosphorus in the dry matter",
                content.Source)
            : null;
    }

    /// <summary>Potash by the content of the dry matter; null where none is held.</summary>
    internal static CoverCropRange? Potash(CoverCrop cover, CoverCropRange? matter) =>
        matter is not null && cover.ValueOf("potassium-percent") is { Least: { } from, Most: { } to } content
            ? new CoverCropRange(
                PotashInStand.Of((matter.Low, Percent(from))).Amount, PotashInStand.Of((matter.High, Percent(to))).Amount, $"{content.Shown} % potassium in the dry matter", content.Source)
            : null;

    /// <summary>The sentence on phosphorus: what is moved, beside what the bed is short, and how strong the evidence is.</summary>
    internal static Cited<string>? Words(CoverCropNumbers numbers, CoverCropValue? threshold, CoverCropQuestion question)
    {
        if (numbers.Phosphate is not { } moved)
        {
            return null;
        }

        var bed = question.Area is { } ground ? $" ({PlainNumber.Range(moved.Low.On(ground).Pounds, moved.High.On(ground).Pounds)} lb on this bed)" : "";
        var text = $"Takes up and returns about {PlainNumber.Range(moved.Low.PoundsPerAcre, moved.High.PoundsPerAcre)} lb of P2O5 an acre{bed}, by {moved.Basis}: moved, not added.";
        if (question.PhosphorusShort)
        {
            text += question.PhosphateShort is { } missing && missing > default(MassPerArea)
                ? $" The bed is short {PlainNumber.Of(missing.PoundsPerAcre)} lb of P2O5 an acre; no cover crop makes that up."
                : " The bed is short of phosphorus; no cover crop makes that up.";
        }

        text += numbers.PhosphorusEvidence is { } strength ? " " + strength : "";
        text += threshold is not null ? $" At or below {threshold.Shown} % phosphorus no release was found." : "";
        return new Cited<string>(text, moved.Source);
    }

    private static Rate<P> Uptake(decimal kilogramsPerHectare) => new(MassPerArea.FromKilogramsPerHectare((double)kilogramsPerHectare));

    private static MassShare Percent(decimal percent) => MassShare.FromPercent((double)percent);
}
