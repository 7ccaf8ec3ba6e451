using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Biomass;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Beds;

/// <summary>Dry matter of a stand in any of the ways in which it may be told.</summary>
internal static class StandReader
{
    private static readonly MassShare AllGround = MassShare.FromFraction(1);

    private static readonly Dictionary<string, bool> RateUnits = new(StringComparer.Ordinal) { ["lb/acre"] = false, ["kg/ha"] = true };

    /// <summary>Dry matter and, where it is an estimate, what is said with it; null when it was not told, or after a refusal.</summary>
    public static (MassPerArea DryMatter, Assumption? Estimate)? DryMatter(
        WrittenQuantity? matter, IReadOnlyList<WrittenSample>? samples, WrittenQuantity? height, WrittenNumber? coverPercent, CoverCrop? cover, string pointer, Tables tables, FaultList faults, WorkingSheet? sheet)
    {
        if (matter is not null)
        {
            return Rate(matter, PointerPath.Down(pointer, "dryMatter"), faults) is { } rate ? (rate, null) : null;
        }

        if (samples is { Count: > 0 })
        {
            return Cuts(samples, PointerPath.Down(pointer, "samples"), faults) is { } cuts ? (CutStand.DryMatter(cuts, sheet), null) : null;
        }

        var here = PointerPath.Down(pointer, "height");
        if (cover is null || UnitWords.ReadLength(height, here, faults) is not { } tall)
        {
            return null;
        }

        var stand = new StandHeight(tall, coverPercent?.Number is { } percent ? MassShare.FromPercent((double)percent) : AllGround);
        if (stand.DryMatter(cover, sheet).TryGet(out var estimated, out var reason))
        {
            return (estimated, StandHeight.LowConfidence(tables.CoverCropRules));
        }

        faults.Add(here, reason);
        return null;
    }

    /// <summary>Cover crops by id; unknown ones are refused at their places.</summary>
    public static IReadOnlyList<CoverCrop> Species(IReadOnlyList<string>? ids, string pointer, Tables tables, FaultList faults) =>
        [.. Enumerable.Range(0, ids?.Count ?? 0).Select(i => Named.Read(ids![i], PointerPath.Down(pointer, i), tables.CoverCrop, faults)).OfType<CoverCrop>()];

    private static MassPerArea? Rate(WrittenQuantity written, string pointer, FaultList faults) =>
        written.Value?.Number is { } value && !faults.AnyWithin(pointer) && UnitWords.ReadWord(written.Unit, RateUnits, "The unit of dry matter", "unknown-unit", PointerPath.Down(pointer, "unit"), faults) is { } metric
            ? metric ? MassPerArea.FromKilogramsPerHectare((double)value) : MassPerArea.FromPoundsPerAcre((double)value)
            : null;

    private static List<CutSample>? Cuts(IReadOnlyList<WrittenSample> samples, string pointer, FaultList faults)
    {
        var cuts = new List<CutSample>(samples.Count);
        for (var i = 0; i < samples.Count; i++)
        {
            var here = PointerPath.Down(pointer, i);
            var frame = UnitWords.ReadArea(samples[i].Frame, PointerPath.Down(here, "frame"), faults);
            var weighed = UnitWords.ReadMass(samples[i].Dried, PointerPath.Down(here, "dried"), faults) ?? UnitWords.ReadMass(samples[i].Fresh, PointerPath.Down(here, "fresh"), faults);
            if (frame is { } ground && weighed is { } mass)
            {
                cuts.Add(new CutSample(ground, mass, samples[i].DryMatterPercent?.Number is { } percent ? MassShare.FromPercent((double)percent) : null));
            }
        }

        return cuts.Count == samples.Count ? cuts : null;
    }
}
