using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>Writes the nitrogen of a bed through the season.</summary>
internal static class NitrogenWriter
{
    public static NitrogenInTimeAnswer? Write(NitrogenInTime? nitrogen, Bed bed, Calculation calculation) => nitrogen is null
        ? null
        : new NitrogenInTimeAnswer(
            [.. nitrogen.Plantings.Select(p => Write(p, bed, calculation))],
            [.. nitrogen.Factors.Select(f => new NitrogenFactorAnswer(f.Material, f.Name, Write(f.Used, calculation), [.. f.Beside.Select(b => Write(b, calculation))]))]);

    private static PlantingNitrogenAnswer Write(PlantingNitrogen planting, Bed bed, Calculation calculation) => new(
        planting.PlantingIndex,
        planting.Crop.Id,
        Of(planting.Need, calculation),
        [.. planting.Dressings.Select(d => Write(d, bed, calculation))],
        [.. planting.Days.Select(d => new NitrogenDayAnswer(
            Written(d.Day), d.AfterPlanting, d.What, Of(d.Released, calculation), Of(d.Wanted, calculation), calculation.Cite(Citation.OurArithmetic)))],
        [.. planting.Credits.Select(c => c.From)],
        planting.TiedUp is { } tied ? Of(tied, calculation) : null,
        Write(planting.Uptake, calculation),
        planting.NitrateTest is { } test ? Write(test, calculation) : null,
        Write(planting.AfterHarvest, calculation),
        calculation.Cite(planting.Source));

    private static DressingAnswer Write(NitrogenDressing dressing, Bed bed, Calculation calculation) => new(
        dressing.Time switch
        {
            DressingTime.Base => "base",
            DressingTime.Sidedress => "sidedress",
            _ => "season",
        },
        dressing.When,
        Written(dressing.From),
        Written(dressing.To),
        Of(dressing.Wanted, calculation),
        [.. dressing.Parts.Select(p => new DressingPartAnswer(
            p.Offered.Material.Id,
            p.Offered.Material.Name,
            RateAnswer.Of(p.Rate, bed.Area, BedReader.WordOf(bed.Spread), calculation.Units),
            calculation.Units.Of(p.PerBed),
            Of(p.Nitrogen, calculation),
            Written(p.SpreadBy),
            calculation.Cite(Citation.OurArithmetic)))],
        calculation.Cite(dressing.Source));

    private static SaidAnswer Write(Cited<string> said, Calculation calculation) => new(said.Value, calculation.Cite(said.Source));

    private static QuantityRange Of(RateRange range, Calculation calculation) => calculation.Units.PerArea(range.Low, range.High);

    private static string? Written(DateOnly? day) => day is { } date ? Dates.Write(date) : null;
}
