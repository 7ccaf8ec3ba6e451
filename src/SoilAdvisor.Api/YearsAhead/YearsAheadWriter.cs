using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Plans;
using SoilAdvisor.Api.Ratings;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>Writes out the years ahead of a bed and its compost for structure.</summary>
internal static class YearsAheadWriter
{
    private const string Unit = "mg/kg";

    public static YearsAheadAnswer? Write(YearsAheadPlan? plan, string bedPointer, Calculation calculation) => plan is null ? null : new YearsAheadAnswer(
        plan.Years,
        Write(plan.Phosphorus, bedPointer, calculation),
        Write(plan.Potassium, bedPointer, calculation),
        [.. plan.HoldRates.Select(h => new HoldRateAnswer(
            h.Offered.Material.Id,
            h.Offered.Material.Name,
            calculation.Units.PerArea(h.Rate),
            calculation.Units.PerArea(h.Low, h.High),
            calculation.Units.PerArea(h.Nitrogen, h.NitrogenHigh),
            h.AboveLargestSingleRate,
            calculation.Cite(Citation.OurArithmetic)))],
        plan.WithoutPhosphorus is { } without ? Said(without, calculation) : null);

    public static StructureAnswer? Write(Answer<StructureDressing>? answer, Bed bed, string bedPointer, Calculation calculation)
    {
        if (answer is not { } asked)
        {
            return null;
        }

        var by = calculation.Cite(Citation.OurArithmetic);
        if (!asked.TryGet(out var dressing, out var reason))
        {
            return new StructureAnswer(by) { Material = bed.Structure?.Material, Refused = Fault.Of(PointerPath.Down(bedPointer, "structure"), reason) };
        }

        var (units, perBed) = (calculation.Units, dressing.Rate.On(bed.Area));
        return new StructureAnswer(by)
        {
            Material = dressing.Offered.Material.Id,
            Name = dressing.Offered.Material.Name,
            Asked = units.PerArea(dressing.Asked),
            Rate = RateAnswer.Of(dressing.Rate, bed.Area, BedReader.WordOf(bed.Spread), units),
            Volume = ApplicationWriter.Write(VolumeMeasures.For(dressing.Offered.Material, perBed), calculation),
            LimitedBy = dressing.LimitedBy,
            TotalP2O5 = units.PerArea(dressing.Phosphate.Amount, dressing.PhosphateHigh.Amount),
            YearsOfRemoval = dressing.YearsOfRemoval is { } years ? Units.Rounded(years) : null,
            TestRise = dressing.Rise is { } rise ? new RiseAnswer(Units.Rounded(rise.Low.Value), Units.Rounded(rise.Likely.Value), Units.Rounded(rise.High.Value), Unit) : null,
            Nitrogen = units.PerArea(dressing.Nitrogen, dressing.NitrogenHigh),
            Cost = MoneyAnswer.Of(Cost(dressing, perBed)),
        };
    }

    private static Agronomy.Materials.Money? Cost(StructureDressing dressing, UnitsNet.Mass perBed) =>
        dressing.Offered.PricePerKilogram is { } price ? price with { Value = price.Value * (decimal)perBed.Kilograms } : null;

    private static OutlookAnswer? Write(Answer<NutrientOutlook>? answer, string bedPointer, Calculation calculation)
    {
        if (answer is not { } asked)
        {
            return null;
        }

        var by = calculation.Cite(Citation.OurArithmetic);
        if (!asked.TryGet(out var outlook, out var reason))
        {
            return new OutlookAnswer(by) { Refused = Fault.Of(PointerPath.Down(bedPointer, "crops"), reason) };
        }

        var units = calculation.Units;
        return new OutlookAnswer(by)
        {
            Unit = Unit,
            Extractant = Words.Extractants.IdOf(outlook.Projection.Test.Extractant),
            Standing = RatingWriter.WordOf(outlook.Standing),
            Target = outlook.TargetFrom is null && outlook.TargetTo is null ? null : new TargetSpanAnswer(Number(outlook.TargetFrom), Number(outlook.TargetTo)),
            Applied = units.PerArea(outlook.Applied),
            Once = outlook.Once.IsZero ? null : units.PerArea(outlook.Once),
            Removed = units.PerArea(outlook.Removed),
            Years = [.. outlook.Projection.Years.Select(y => new YearAnswer(y.Year, Number(y.Low)!.Value, Number(y.Likely)!.Value, Number(y.High)!.Value))],
            Reaches = outlook.Reaches is { } reached
                ? new ReachesAnswer(reached.What, new Quantity(Number(reached.Level)!.Value, Unit), Number(reached.By.Likely), Number(reached.By.Earliest), Number(reached.By.Latest))
                : null,
            Words = [.. outlook.Words.Select(w => Said(w, calculation))],
        };
    }

    private static SaidAnswer Said(Cited<string> words, Calculation calculation) => new(words.Value, calculation.Cite(words.Source));

    private static decimal? Number(SoilConcentration? level) => level is { } known ? Units.Rounded(known.MilligramsPerKilogram) : null;

    private static decimal? Number(double? years) => years is { } known ? Units.Rounded(known) : null;
}
