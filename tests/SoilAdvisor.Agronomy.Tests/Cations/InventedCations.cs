using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Cations;

/// <summary>Rules and soils for tests of the mechanism. Numbers that are easy to sum by head; whether the real ones are the published ones is tested elsewhere.</summary>
internal static class InventedCations
{
    private static readonly Citation Seen = new("invented", null, Evidence.Seen);

    /// <summary>Ca 200, Mg 100, K 400, Na 200.</summary>
    public static readonly MilliequivalentWeights Even = new("even", "Even weights", ReportingUnit.MilligramsPerKilogram, 200, 100, 400, 200, Seen);

    /// <summary>Twice the even ones, in lb/acre.</summary>
    public static readonly MilliequivalentWeights PerAcre = new("per-acre", "Weights of an acre", ReportingUnit.PoundsPerAcre, 400, 200, 800, 400, Seen);

    public static readonly CationRules Rules = new(
        [Even, PerAcre],
        [
            new(Procedure.BufferAdamsEvans, 8, 8.00m, "meq/100g", Seen), new(Procedure.BufferMooreSikora, 8, 8.00m, "meq/100g", Seen),
            new(Procedure.BufferSmp, 12, 7.0m, "meq/100g", Seen), new(Procedure.BufferMehlich, 4, 6.6m, "meq/100cm3", Seen),
        ],
        new CationLimits(Of(7.3m), Of(7.0m), Of(4), Of(2), Of(0.6m), Of(300), Of(35), Of(1)),
        [new(Extractant.Mehlich3, Analyte.Ca, 50, 80, Seen), new(Extractant.ModifiedMorgan, Analyte.Ca, 40, 60, Seen)],
        [new("example", "An invented trial.", Seen)]);

    public static SoilTest Soil(params IEnumerable<Reading> readings) => new("s1", null, null, null, null, null, null, [.. readings], []);

    /// <summary>Ca 5, Mg 2, K 0.5 meq/100 g by the even weights.</summary>
    public static Reading[] Bases(ReportingUnit unit = ReportingUnit.MilligramsPerKilogram, Extractant extractant = Extractant.Mehlich3, decimal times = 1) =>
        [Cation(Analyte.Ca, 1000 * times, unit, extractant), Cation(Analyte.Mg, 200 * times, unit, extractant), Cation(Analyte.K, 200 * times, unit, extractant)];

    public static Reading Cation(Analyte analyte, decimal value, ReportingUnit unit = ReportingUnit.MilligramsPerKilogram, Extractant extractant = Extractant.Mehlich3) =>
        new(analyte, Amount.Measured(value), unit, Method.Extracted(extractant), $"{analyte} line");

    public static Reading Ph(decimal value, Procedure? procedure = Procedure.PhWater11) => new(Analyte.Ph, Amount.Measured(value), ReportingUnit.PhUnits, Method.By(procedure), "pH line");

    public static Reading Buffer(decimal value, Procedure? name) => new(Analyte.BufferPh, Amount.Measured(value), ReportingUnit.PhUnits, Method.By(name), "buffer line");

    public static Reading PrintedAcidity(decimal value, ReportingUnit unit = ReportingUnit.MilliequivalentsPer100Grams) => new(Analyte.Acidity, Amount.Measured(value), unit, default, "acidity line");

    public static Reading Salts(decimal value, Procedure? extract) => new(Analyte.ElectricalConductivity, Amount.Measured(value), ReportingUnit.DecisiemensPerMetre, Method.By(extract), "salts line");

    private static Cited<decimal> Of(decimal value) => new(value, Seen);
}
