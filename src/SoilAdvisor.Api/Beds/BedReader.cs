using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.YearsAhead;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Beds;

/// <summary>The one place where a bed turns from words into types. A bed with a fault is refused whole, with every fault of it.</summary>
internal static class BedReader
{
    private static readonly Dictionary<string, SpreadBasis> Spreads = new(StringComparer.Ordinal)
    {
        ["bed-top"] = SpreadBasis.BedTop,
        ["bed-and-path"] = SpreadBasis.BedAndPath,
        ["band"] = SpreadBasis.Band,
    };

    /// <summary>Words of a spread basis.</summary>
    public static string WordOf(SpreadBasis spread) => Spreads.First(s => s.Value == spread).Key;

    /// <summary>Reads a bed that the validator has judged; null when it was refused.</summary>
    public static Bed? Read(WrittenBed written, SoilTest? test, string? region, string pointer, Tables tables, FaultList faults)
    {
        var ground = ReadGround(written, pointer, faults);
        var plantings = ReadPlantings(written, pointer, tables, faults);
        var applied = ReadEach(written.Applied, PointerPath.Down(pointer, "applied"), faults, (a, here) => ReadApplied(a, here, test, region, tables, faults));
        var previous = ReadPrevious(written, pointer, tables, faults);
        var structure = StructureReader.Read(written.Structure, PointerPath.Down(pointer, "structure"), tables, faults);
        if (ground is null || test is null || faults.AnyWithin(pointer))
        {
            return null;
        }

        return new Bed(
            written.Id!.Trim(), ground.Area, ground.Spread, test, written.Site ?? "field", plantings, applied, previous,
            ReadGap(written.Gap), (double?)written.WaterWithinFeet?.Number, ground.Shown, ground.Assumptions)
        {
            Structure = structure,
        };
    }

    /// <summary>A time that the validator has judged; null when none was given or it was faulty.</summary>
    public static Gap? ReadGap(WrittenGap? gap) =>
        Dates.Read(gap?.From) is { } from && Dates.Read(gap?.To) is { } to && from <= to ? new Gap(from, to) : null;

    /// <summary>Frost dates that the validator has judged.</summary>
    public static FrostDates? ReadFrost(WrittenFrost? frost) => frost is null ? null : new FrostDates(Dates.Read(frost.LastSpring), Dates.Read(frost.FirstFall));

    /// <summary>The crops of a bed.</summary>
    public static IReadOnlyList<Planting> ReadPlantings(WrittenBed written, string pointer, Tables tables, FaultList faults) =>
        ReadEach(written.Crops, PointerPath.Down(pointer, "crops"), faults, (crop, here) => ReadPlanting(crop, here, tables, faults));

    /// <summary>What stood on a bed before.</summary>
    public static IReadOnlyList<PreviousStand> ReadPrevious(WrittenBed written, string pointer, Tables tables, FaultList faults) =>
        ReadEach(written.Previous, PointerPath.Down(pointer, "previous"), faults, (s, here) => ReadStand(s, here, tables, faults));

    /// <summary>The ground of a bed that the validator has judged; null when it was refused.</summary>
    public static BedGround? ReadGround(WrittenBed written, string pointer, FaultList faults)
    {
        var spread = written.Spread is null ? null : UnitWords.ReadWord(written.Spread, Spreads, "The spread", "unknown-spread", PointerPath.Down(pointer, "spread"), faults);
        var before = faults.Count;
        var length = UnitWords.ReadLength(written.Length, PointerPath.Down(pointer, "length"), faults);
        var width = UnitWords.ReadLength(written.Width, PointerPath.Down(pointer, "width"), faults);
        var area = UnitWords.ReadArea(written.Area, PointerPath.Down(pointer, "area"), faults);
        var spacing = UnitWords.ReadLength(written.CenterSpacing, PointerPath.Down(pointer, "centerSpacing"), faults);
        string[] measures = ["length", "width", "area", "centerSpacing"];
        if (faults.Count > before || measures.Any(m => faults.AnyWithin(PointerPath.Down(pointer, m))))
        {
            return null;
        }

        if (BedGeometry.Ground(length, width, area, spacing, spread).TryGet(out var ground, out var reason))
        {
            return ground;
        }

        faults.Add(PointerPath.Down(pointer, "area"), reason);
        return null;
    }

    private static Planting? ReadPlanting(WrittenPlanting written, string pointer, Tables tables, FaultList faults) =>
        Named.Read(written.Crop, PointerPath.Down(pointer, "crop"), tables.Crop, faults) is { } crop
            ? new Planting(
                crop,
                Dates.Read(written.PlantingDate),
                Dates.Read(written.FirstHarvest),
                Dates.Read(written.HarvestEnd),
                written.ExpectedYield is { Value.Number: { } yield, Unit: { } unit } ? new ExpectedYield(yield, unit.Trim()) : null,
                written.Placement switch
                {
                    "contact" => SoilContact.Contact,
                    "no-contact" => SoilContact.NoContact,
                    _ => null,
                })
            : null;

    private static AppliedMaterial? ReadApplied(WrittenApplied written, string pointer, SoilTest? test, string? region, Tables tables, FaultList faults)
    {
        var material = Named.Read(written.Material, PointerPath.Down(pointer, "material"), tables.Material, faults);
        var amount = UnitWords.ReadMass(written.Amount, PointerPath.Down(pointer, "amount"), faults);
        if (material is null || amount is not { } mass || Dates.Read(written.Date) is not { } date)
        {
            return null;
        }

        var ph = test?.Of(Analyte.Ph) is { Amount: { Kind: AmountKind.Measured } measured } ? measured.Number : (decimal?)null;
        var workedIn = Dates.Read(written.Incorporated);
        var (how, days) = TestedForms.Worked(date, workedIn);
        var tested = TestedForms.WithFactors(MaterialReader.ReadAnalysis(written.Analysis, material, PointerPath.Down(pointer, "analysis"), tables, faults), material, tables.Nitrogen, region, how, days);
        if (Agronomy.Materials.MaterialAnalyses.For(material, ph, tested).TryGet(out var analysis, out var reason))
        {
            return new AppliedMaterial(material, analysis, mass, date, workedIn);
        }

        faults.Add(pointer, reason);
        return null;
    }

    private static PreviousStand? ReadStand(WrittenStand written, string pointer, Tables tables, FaultList faults)
    {
        var crop = Named.Read(written.Crop, PointerPath.Down(pointer, "crop"), tables.Crop, faults);
        var cover = Named.Read(written.CoverCrop, PointerPath.Down(pointer, "coverCrop"), tables.CoverCrop, faults);
        var mixture = StandReader.Species(written.Mixture, PointerPath.Down(pointer, "mixture"), tables, faults);
        var stand = StandReader.DryMatter(written.DryMatter, written.Samples, written.Height, written.CoverPercent, cover, pointer, tables, faults, null);
        return (crop?.Id ?? cover?.Id ?? mixture.FirstOrDefault()?.Id) is { } id
            ? new PreviousStand(id, crop is null, stand?.DryMatter, written.NitrogenPercent?.Number, written.Stage, Dates.Read(written.Killed))
            {
                Partners = [.. mixture.Skip(1).Select(m => m.Id)],
                Estimate = stand?.Estimate,
            }
            : null;
    }

    private static List<TRead> ReadEach<TWritten, TRead>(IReadOnlyList<TWritten>? written, string pointer, FaultList faults, Func<TWritten, string, TRead?> read)
        where TRead : class
    {
        var all = new List<TRead>();
        for (var i = 0; i < (written?.Count ?? 0); i++)
        {
            var here = PointerPath.Down(pointer, i);
            if (!faults.AnyWithin(here) && read(written![i], here) is { } one)
            {
                all.Add(one);
            }
        }

        return all;
    }
}
