using SoilAdvisor.Agronomy.CoverCrops.Mixtures;
using SoilAdvisor.Agronomy.CoverCrops.Seed;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>From the words of a sowing to types.</summary>
internal static class SeedReader
{
    /// <summary>Ways of sowing by their words.</summary>
    public static IReadOnlyDictionary<string, WayOfSowing> Ways { get; } = new Dictionary<string, WayOfSowing>(StringComparer.Ordinal)
    {
        ["drilled"] = WayOfSowing.Drilled,
        ["broadcast"] = WayOfSowing.Broadcast,
        ["surface"] = WayOfSowing.Surface,
    };

    /// <summary>The species; every fault is said at its place.</summary>
    public static IReadOnlyList<MixturePart> Read(IReadOnlyList<WrittenSpecies> written, Tables tables, FaultList faults) =>
        [.. written.Select((s, i) => Read(s, PointerPath.Down("/species", i), tables, faults)).OfType<MixturePart>()];

    private static MixturePart? Read(WrittenSpecies written, string pointer, Tables tables, FaultList faults)
    {
        var before = faults.Count;
        var cover = Named.Read(written.CoverCrop, PointerPath.Down(pointer, "coverCrop"), tables.CoverCrop, faults);
        var full = written.FullRate is null ? null : UnitWords.ReadRate(written.FullRate, PointerPath.Down(pointer, "fullRate"), faults);
        var price = MaterialReader.ReadPrice(written.Price, PointerPath.Down(pointer, "price"), faults);
        var tag = faults.AnyWithin(pointer) ? null : ReadTag(written, pointer, faults);
        return cover is not null && faults.Count == before && !faults.AnyWithin(pointer)
            ? new MixturePart(
                cover,
                written.SharePercent?.Number is { } share ? MassShare.FromPercent((double)share) : null,
                written.SeedsPerSquareFoot?.Number is { } seeds ? SeedsPerArea.FromPerSquareFoot((double)seeds) : null,
                written.SeedsPerPound?.Number is { } count ? SeedCount.FromPerPound((double)count) : null,
                full,
                tag,
                price)
            : null;
    }

    private static SeedTag? ReadTag(WrittenSpecies written, string pointer, FaultList faults)
    {
        if (written.Purity?.Number is not { } purity || written.Germination?.Number is not { } germination)
        {
            return null;
        }

        if (SeedTag.Of(purity, germination, written.HardSeed?.Number ?? 0).TryGet(out var tag, out var reason))
        {
            return tag;
        }

        faults.Add(PointerPath.Down(pointer, "germination"), reason);
        return null;
    }
}
