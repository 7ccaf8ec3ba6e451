using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Planning.CoverSeason;
using SoilAdvisor.ReferenceTables;
using UnitsNet;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>From the words of a season to types.</summary>
internal static class SeasonReader
{
    private const double LeastPackGrams = 1;

    /// <summary>What is asked of a season; null when none was asked.</summary>
    public static SeasonWish? ReadWish(WrittenSeason? written, string pointer, Tables tables, FaultList faults)
    {
        if (written is null)
        {
            return null;
        }

        var seed = new List<SeedStock>();
        for (var i = 0; i < Math.Min(written.Seed?.Count ?? 0, Limits.Materials); i++)
        {
            var here = PointerPath.Down(PointerPath.Down(pointer, "seed"), i);
            if (ReadSeed(written.Seed![i], here, tables, faults) is not { } stock)
            {
                continue;
            }

            if (seed.Exists(s => s.CoverCrop == stock.CoverCrop))
            {
                faults.Add(PointerPath.Down(here, "coverCrop"), "seed-listed-twice", $"Seed of {stock.CoverCrop} is listed twice.", "Keep one entry with its whole stock.");
            }
            else
            {
                seed.Add(stock);
            }
        }

        if (seed.Select(s => s.PricePerKilogram?.Currency).OfType<string>().Distinct(StringComparer.Ordinal).Count() > 1)
        {
            faults.Add(PointerPath.Down(pointer, "seed"), "two-currencies", "Seed is priced in more than one currency.", "Give all prices in one currency; none is converted here.");
        }

        return new SeasonWish(
            (int?)written.MostSpecies?.Number,
            written.PointsPerSpecies?.Number ?? SeasonWish.UsualPointsPerSpecies,
            (int?)written.FamilyGapMonths?.Number,
            written.OnlySeedOnHand ?? false,
            seed);
    }

    /// <summary>The gaps of the beds with what fits them. A bed with a fault, and one without a gap of at least four weeks, is left out and said.</summary>
    public static IReadOnlyList<SeasonGap> ReadGaps(SeasonRequest request, Calculation calculation)
    {
        var (faults, tables) = (calculation.Faults, calculation.Tables);
        var gaps = new List<SeasonGap>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        var without = new List<string>();
        for (var i = 0; i < Math.Min(request.Beds!.Count, Limits.Beds); i++)
        {
            var (written, here) = (request.Beds[i], PointerPath.Down("/beds", i));
            if (written.Id?.Trim() is { Length: > 0 } id && !ids.Add(id))
            {
                faults.Add(PointerPath.Down(here, "id"), "duplicate-bed", $"The bed {Rules.Clip(id)} stands twice.", "Give each bed its own id; a bed with two gaps has one entry, whose crops have their dates.");
            }

            var before = faults.Count;
            var ground = BedReader.ReadGround(written, here, faults);
            var plantings = BedReader.ReadPlantings(written, here, tables, faults);
            var previous = BedReader.ReadPrevious(written, here, tables, faults);
            if (ground is null || faults.Count > before || faults.AnyWithin(here))
            {
                continue;
            }

            var free = BedSeason.GapsOf(BedReader.ReadGap(written.Gap), plantings);
            if (free.Count == 0)
            {
                without.Add(written.Id!.Trim());
            }

            foreach (var gap in free)
            {
                var selection = CoverCropChoices.For(
                    new CoverCropQuestion(gap)
                    {
                        Aims = request.Aims ?? [],
                        Weights = CoverCropWeightsReader.Read(request.Weights),
                        Climate = ClimateReader.Read(request.Climate, request.Frost, request.Region),
                        LastCrop = BedSeason.LastCrop(gap, plantings, previous, tables.Crops),
                        NextCrop = BedSeason.NextCrop(gap, plantings)?.Crop,
                        Area = ground.Area,
                    },
                    tables.CoverCropTables);
                calculation.Assume([.. ground.Assumptions, .. selection.Assumptions]);
                gaps.Add(BedSeason.Of(written.Id!.Trim(), ground.Area, selection, plantings, previous, tables.Crops, tables.CoverCrops));
            }
        }

        if (gaps.Count == 0 && faults.Count == 0)
        {
            faults.Add("/beds", "no-gaps", "No bed has a gap, and none can be read from the crops.", "Give a bed a gap with from and to, or the last harvest of one crop and the planting date of the next.");
        }
        else if (without.Count > 0)
        {
            calculation.Assume([new Assumption("beds-without-gap", $"No gap was given or can be read from the crops of {string.Join(", ", without)}: nothing is sown there.", Citation.OurArithmetic)]);
        }

        return gaps;
    }

    private static SeedStock? ReadSeed(WrittenSeed written, string pointer, Tables tables, FaultList faults)
    {
        var before = faults.Count;
        var cover = Named.Read(written.CoverCrop, PointerPath.Down(pointer, "coverCrop"), tables.CoverCrop, faults);
        var onHand = UnitWords.ReadMass(written.OnHand, PointerPath.Down(pointer, "onHand"), faults);
        var pack = UnitWords.ReadMass(written.Pack, PointerPath.Down(pointer, "pack"), faults);
        if (pack is { } size && size.Grams < LeastPackGrams)
        {
            faults.Add(PointerPath.Down(pointer, "pack"), "pack-too-small", "The pack holds less than 1 g.", "Give the mass of the whole pack.");
        }

        var price = MaterialReader.ReadPrice(written.Price, PointerPath.Down(pointer, "price"), faults);
        return cover is not null && faults.Count == before && !faults.AnyWithin(pointer)
            ? new SeedStock(cover.Id, onHand ?? Mass.Zero, written.Buy ?? true, pack, price)
            : null;
    }
}
