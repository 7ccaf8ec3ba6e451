using System.Globalization;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Planning.Beds;

/// <summary>What makes the numbers of a bed less sure, or its spreading less safe. Limits without a source are ours and say so.</summary>
internal static class BedWarnings
{
    private const int OldYears = 3;
    private const double HeavyNutrientPoundsPerAcre = 100;
    private const double HeavyLimePoundsPerAcre = 1000;
    private const double NearWaterFeet = 100;
    private const double FarAbovePoundsPerAcre = 40;
    private const double FarAboveTimes = 2;
    private const decimal AlkalinePh = 7.4m;

    private static readonly Nutrient[] Heavy = [Nutrient.AvailableN, Nutrient.TotalP2O5, Nutrient.K2O];

    public static IReadOnlyList<string> Of(Bed bed, DateOnly date, BedLime lime, IReadOnlyList<PlantingFloor> floors, IReadOnlyList<MaterialApplication> applications, IReadOnlyList<NutrientBalance> balances) =>
    [
        .. Age(bed.SoilTest, date),
        .. SpreadAfterSampling(bed),
        .. PhosphorusOnAlkalineSoil(bed.SoilTest),
        .. PhosphateFarAboveNeed(floors, balances),
        .. NitrogenMayPassItsLimit(balances),
        .. Late(date, applications),
        .. Water(bed, applications.Count > 0 || lime.Plan?.Chosen is not null),
    ];

    private static IEnumerable<string> Age(SoilTest test, DateOnly date)
    {
        if (test.Sampled is not { } sampled)
        {
            yield return $"Soil test {test.Id} has no sampling date: its age could not be checked. A test older than {OldYears} years should be repeated.";
        }
        else if (sampled < date.AddYears(-OldYears))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Soil test {test.Id} was sampled on {sampled:yyyy-MM-dd}, more than {OldYears} years before this plan. Sample again before you spread much.");
        }
        else if (sampled > date)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Soil test {test.Id} was sampled on {sampled:yyyy-MM-dd}, after the date of this plan ({date:yyyy-MM-dd}). Check both dates.");
        }
    }

    private static IEnumerable<string> SpreadAfterSampling(Bed bed)
    {
        foreach (var applied in SpreadSinceSample.Materials(bed))
        {
            var brought = SpreadSinceSample.Supplied(applied, bed);
            var most = Heavy.OrderByDescending(n => brought[n]).First();
            if (brought[most].PoundsPerAcre >= HeavyNutrientPoundsPerAcre || brought[Nutrient.CalciumCarbonate].PoundsPerAcre >= HeavyLimePoundsPerAcre)
            {
                var what = brought[most].PoundsPerAcre >= HeavyNutrientPoundsPerAcre ? most : Nutrient.CalciumCarbonate;
                yield return string.Create(CultureInfo.InvariantCulture, $"Soil test {bed.SoilTest.Id} is from before a heavy spreading: {applied.Material.Name} on {applied.Date:yyyy-MM-dd} brought {brought[what].PoundsPerAcre:0} lb/acre of {what.Words()}. The test no longer shows this soil; sample again. (From {HeavyNutrientPoundsPerAcre} lb/acre of a nutrient or {HeavyLimePoundsPerAcre} lb/acre of CaCO3 we call it heavy.)");
            }
        }
    }

    private static IEnumerable<string> PhosphorusOnAlkalineSoil(SoilTest test)
    {
        if (test.Of(Analyte.P)?.Method.Extractant is not { } extractant || extractant is not (Extractant.BrayP1 or Extractant.Mehlich3 or Extractant.Mehlich1))
        {
            yield break;
        }

        var ph = test.Of(Analyte.Ph) is { Amount: { Kind: AmountKind.Measured } amount } ? amount.Number : (decimal?)null;
        if (ph > AlkalinePh || test.FreeLime == true)
        {
            var why = ph > AlkalinePh ? string.Create(CultureInfo.InvariantCulture, $"pH {ph}") : "free lime";
            yield return $"Soil test {test.Id} shows {why}: {Words.Extractants.IdOf(extractant)} may read phosphorus wrong there, because the lime spends its acid. Ask the laboratory for an Olsen test.";
        }
    }

    private static IEnumerable<string> PhosphateFarAboveNeed(IReadOnlyList<PlantingFloor> floors, IReadOnlyList<NutrientBalance> balances)
    {
        var needed = floors.Where(f => f.Nutrient == Nutrient.AvailableP2O5).Select(f => f.High).Aggregate(default(MassPerArea), (a, b) => a + b);
        var total = SuppliedOf(balances, Nutrient.TotalP2O5).PoundsPerAcre;
        if (total > needed.PoundsPerAcre * FarAboveTimes && total > needed.PoundsPerAcre + FarAbovePoundsPerAcre)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The plan brings {total:0} lb/acre of total P2O5 against a need of {needed.PoundsPerAcre:0} lb/acre; {SuppliedOf(balances, Nutrient.AvailableP2O5).PoundsPerAcre:0} lb/acre of it counts this season and the rest stays in the soil. Test again before you spread phosphate here next, and prefer materials with less of it. (We warn above {FarAboveTimes} times the need and {FarAbovePoundsPerAcre} lb/acre more.)");
        }
    }

    // The plan counts on the low end of what is published; a warm, moist season may bring the high end.
    private static IEnumerable<string> NitrogenMayPassItsLimit(IReadOnlyList<NutrientBalance> balances) => balances
        .Where(b => b.Nutrient == Nutrient.AvailableN && b.SuppliedHigh > b.Ceiling)
        .Select(b => string.Create(CultureInfo.InvariantCulture, $"The plan counts on {b.Supplied.PoundsPerAcre:0} lb/acre of N, the low end of what its materials are published to release. At the high end they release {b.SuppliedHigh.PoundsPerAcre:0} lb/acre, above the limit of {b.Ceiling!.Value.PoundsPerAcre:0} lb/acre. Hold back the last part, and watch the crop or test the soil's nitrate before you give it."));

    private static MassPerArea SuppliedOf(IReadOnlyList<NutrientBalance> balances, Nutrient nutrient) =>
        balances.FirstOrDefault(b => b.Nutrient == nutrient)?.Supplied ?? default;

    private static IEnumerable<string> Late(DateOnly date, IReadOnlyList<MaterialApplication> applications) => applications
        .Where(a => a.SpreadBy < date)
        .Select(a => string.Create(CultureInfo.InvariantCulture, $"{a.Offered.Material.Name} should lie {a.Offered.WaitBeforeSowingDays} days before sowing; its last day, {a.SpreadBy:yyyy-MM-dd}, is past. Sow later, or put it beside the growing crop and away from the stems."));

    private static IEnumerable<string> Water(Bed bed, bool spreads)
    {
        if (spreads && bed.WaterWithinFeet <= NearWaterFeet)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Water or a well lies {bed.WaterWithinFeet:0} ft from this bed. Leave the strip beside it unspread, work materials in the same day, and never spread before heavy rain or on frozen ground. Local rules set the distance; we warn from {NearWaterFeet} ft.");
        }
    }
}
