using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>Numbers that look like another unit or another way to count. The limits are wide and ours: they catch mix-ups and rate nothing.</summary>
internal static class UnitDoubts
{
    private const decimal LeastOrganicMatter = 0.1m;
    private const decimal LeastCalcium = 30m;
    private const decimal PercentCalcium = 2m;
    private const decimal MostNitrateNitrogen = 120m;
    private const decimal MostConductivity = 20m;
    private const decimal LeastPh = 3.5m;
    private const decimal MostPh = 9.5m;
    private const decimal MostIndex = 9m;

    public static Suspicion? FractionOfOrganicMatter(SoilTest test) =>
        Measured(test, Analyte.OrganicMatter) is { Amount.Number: > 0 and < LeastOrganicMatter } reading
            ? Doubt("fraction-read-as-percent", [reading], Invariant($"Organic matter is {reading.Amount} %; farmed soils hold more than {LeastOrganicMatter} %."), "If the report writes a fraction, 0.03 is 3 %.")
            : null;

    public static Suspicion? TinyCalcium(SoilTest test) =>
        Measured(test, Analyte.Ca) is { Unit: ReportingUnit.MilligramsPerKilogram or ReportingUnit.MilligramsPerCubicDecimetre, Amount.Number: > 0 and < LeastCalcium } reading
            ? reading.Amount.Number < PercentCalcium
                ? Doubt("percent-read-as-ppm", [reading], Invariant($"Calcium is {reading.Amount} {Words.Units.IdOf(reading.Unit)}; soils hold hundreds. It looks like percent."), "Look at the unit on the report: 0.2 % is 2000 mg/kg.")
                : Doubt("milliequivalents-read-as-ppm", [reading], Invariant($"Calcium is {reading.Amount} {Words.Units.IdOf(reading.Unit)}; soils hold hundreds. It looks like milliequivalents."), "Look at the unit on the report; meq/100g is written as meq/100g.")
            : null;

    public static Suspicion? NitrateCountedWhole(SoilTest test) =>
        Measured(test, Analyte.NitrateN) is { Unit: ReportingUnit.MilligramsPerKilogram or ReportingUnit.MilligramsPerCubicDecimetre, Amount.Number: > MostNitrateNitrogen } reading
            ? Doubt("nitrate-read-as-nitrate-nitrogen", [reading], Invariant($"Nitrate nitrogen is {reading.Amount} {Words.Units.IdOf(reading.Unit)}; more than {MostNitrateNitrogen} is rare. It may be nitrate counted whole."), Invariant($"If the report says NO3 and not NO3-N, divide by 4.43: {reading.Amount.Number / 4.42664m:0.#}."))
            : null;

    public static Suspicion? Microsiemens(SoilTest test) =>
        Measured(test, Analyte.ElectricalConductivity) is { Amount.Number: > MostConductivity } reading
            ? Doubt("microsiemens-read-as-decisiemens", [reading], Invariant($"Soluble salts are {reading.Amount} dS/m; above {MostConductivity} dS/m hardly any crop grows. It may be another unit."), "If the report says µS/cm, divide by 1000; if mS/m, divide by 100.")
            : null;

    public static Suspicion? UnusualPh(SoilTest test) =>
        Measured(test, Analyte.Ph) is { Amount.Number: < LeastPh or > MostPh } reading
            ? Doubt("ph-unusual", [reading], Invariant($"The soil pH is {reading.Amount}; farmed soils lie between {LeastPh} and {MostPh}."), "Check for a slipped digit or a swapped column.")
            : null;

    public static Suspicion? IndexAsConcentration(SoilTest test) =>
        SmallWhole(test, Analyte.P) is { } phosphorus && SmallWhole(test, Analyte.K) is { } potassium
            ? Doubt(
                "index-read-as-concentration",
                SmallWhole(test, Analyte.Mg) is { } magnesium ? [phosphorus, potassium, magnesium] : [phosphorus, potassium],
                Invariant($"Phosphorus {phosphorus.Amount} and potassium {potassium.Amount} {Words.Units.IdOf(potassium.Unit)} are whole numbers no larger than {MostIndex}. They look like index numbers, as the United Kingdom and Ireland print them."),
                "If they are, write the unit index, or take the mg/l figures that stand beside them.")
            : null;

    public static Suspicion? OxidePerHectare(SoilTest test)
    {
        Reading[] readings = [.. new[] { Analyte.P, Analyte.K }.Select(a => Measured(test, a)).OfType<Reading>().Where(r => r is { Unit: ReportingUnit.KilogramsPerHectare, Method.Basis: Basis.Element })];
        return readings.Length == 0
            ? null
            : Doubt(
                "oxide-read-as-element",
                readings,
                $"{string.Join(" and ", readings.Select(r => Words.Analytes.IdOf(r.Analyte)))} stand in kg/ha. Some laboratories print P2O5 and K2O in kg/ha, 2.29 and 1.20 times the element.",
                "Look whether the report says P2O5 or P. If it says P2O5 or K2O, write basis oxide.");
    }

    private static Reading? Measured(SoilTest test, Analyte analyte) => test.Of(analyte) is { Amount.Kind: AmountKind.Measured } reading ? reading : null;

    private static Reading? SmallWhole(SoilTest test, Analyte analyte) =>
        Measured(test, analyte) is { Unit: ReportingUnit.MilligramsPerKilogram or ReportingUnit.MilligramsPerCubicDecimetre, Amount.Number: <= MostIndex } reading
        && reading.Amount.Number == Math.Floor(reading.Amount.Number)
            ? reading
            : null;

    private static Suspicion Doubt(string code, IReadOnlyList<Reading> readings, string message, string suggestion) => new(code, Severity.Suspicion, readings, message, suggestion, Citation.OurJudgement);
}
