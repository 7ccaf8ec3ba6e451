using System.Globalization;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>
/// Changes of unit and basis inside one test, in decimal arithmetic so that a limit is never crossed by rounding noise. Between extractants or
/// detections nothing is converted here.
/// </summary>
public static class ReadingConversion
{
    private const decimal UsualPoundsPerAcre = 2m;

    // kg/ha for one lb/acre: 0.45359237 kg / 0.40468564224 ha, both exact.
    private const decimal KilogramsPerHectareOfPoundPerAcre = 0.45359237m / 0.40468564224m;

    private static readonly Assumption TwiceRule = new(
        "pounds-per-acre-factor",
        "1 mg/kg is counted as 2 lb/acre (two million pounds of soil per acre), because the laboratory's own factor was not given.",
        Citation.CommonPractice);

    /// <summary>The reading's amount in another unit, counted as the element.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="unit">Wanted unit.</param>
    /// <param name="poundsPerAcreFactor">The laboratory's lb/acre for one mg/kg; null takes 2 and says so.</param>
    /// <returns>The converted reading, or a refusal where the units measure different things.</returns>
    public static Answer<ConvertedReading> To(Reading reading, ReportingUnit unit, decimal? poundsPerAcreFactor)
    {
        var basis = reading.Method.Basis == Basis.Oxide ? ElementOfOxide(reading.Analyte) : 1m;
        if (basis is null)
        {
            return Answer<ConvertedReading>.Refused(
                "oxide-basis",
                $"{Words.Analytes.IdOf(reading.Analyte)} has no oxide basis that soil tests use.",
                "State the value as the element, or leave basis out.");
        }

        if (reading.Unit == unit)
        {
            return Answer<ConvertedReading>.Given(new(basis == 1m ? reading.Amount : reading.Amount.Times(basis.Value), basis.Value, []));
        }

        var perAcre = poundsPerAcreFactor ?? UsualPoundsPerAcre;
        if (MassFactor(reading.Unit, perAcre, reading.Analyte) is { } from && MassFactor(unit, perAcre, reading.Analyte) is { } to)
        {
            var factor = basis.Value * from / to;
            var usesArea = IsPerArea(reading.Unit) != IsPerArea(unit);
            return Answer<ConvertedReading>.Given(new(reading.Amount.Times(factor), factor, usesArea && poundsPerAcreFactor is null ? [TwiceRule] : []));
        }

        if (VolumeFactor(reading.Unit, reading.Analyte) is { } fromVolume && VolumeFactor(unit, reading.Analyte) is { } toVolume)
        {
            var factor = basis.Value * fromVolume / toVolume;
            return Answer<ConvertedReading>.Given(new(reading.Amount.Times(factor), factor, []));
        }

        return Answer<ConvertedReading>.Refused(
            "unit-not-convertible",
            string.Create(CultureInfo.InvariantCulture, $"{Words.Analytes.IdOf(reading.Analyte)} in {Words.Units.IdOf(reading.Unit)} cannot be turned into {Words.Units.IdOf(unit)}."),
            IsByVolume(reading.Unit) != IsByVolume(unit)
                ? "By volume and by mass differ by the density of the ground sample. Ask the laboratory for the value by mass (mg/kg), or choose a guide that rates mg/dm3."
                : "Ask the laboratory for the value in the guide's unit, or choose a guide that uses yours.");
    }

    // mg/kg for one of the unit; null where the unit is not a mass of the analyte in a mass of soil.
    private static decimal? MassFactor(ReportingUnit unit, decimal poundsPerAcre, Analyte analyte) => unit switch
    {
        ReportingUnit.MilligramsPerKilogram => 1m,
        ReportingUnit.PoundsPerAcre => 1m / poundsPerAcre,
        ReportingUnit.KilogramsPerHectare => 1m / (poundsPerAcre * KilogramsPerHectareOfPoundPerAcre),
        ReportingUnit.MilliequivalentsPer100Grams => MilligramsPerKilogramOfMilliequivalent(analyte),
        _ => null,
    };

    // mg/dm3 for one of the unit; null where the unit is not a mass of the analyte in a volume of soil. A milliequivalent weighs the same in
    // 100 g and in 100 cm3.
    private static decimal? VolumeFactor(ReportingUnit unit, Analyte analyte) => unit switch
    {
        ReportingUnit.MilligramsPerCubicDecimetre => 1m,
        ReportingUnit.MilliequivalentsPer100CubicCentimetres => MilligramsPerKilogramOfMilliequivalent(analyte),
        _ => null,
    };

    private static bool IsByVolume(ReportingUnit unit) => unit is ReportingUnit.MilligramsPerCubicDecimetre or ReportingUnit.MilliequivalentsPer100CubicCentimetres;

    private static bool IsPerArea(ReportingUnit unit) => unit is ReportingUnit.PoundsPerAcre or ReportingUnit.KilogramsPerHectare;

    // Atomic mass over charge, times 10 (mg/kg for 1 meq/100 g).
    private static decimal? MilligramsPerKilogramOfMilliequivalent(Analyte analyte) => analyte switch
    {
        Analyte.Ca => 40.078m / 2 * 10,
        Analyte.Mg => 24.305m / 2 * 10,
        Analyte.K => 39.0983m * 10,
        Analyte.Na => 22.98977m * 10,
        _ => null,
    };

    private static decimal? ElementOfOxide(Analyte analyte) => analyte switch
    {
        Analyte.P => 2 * 30.973762m / ((2 * 30.973762m) + (5 * 15.999m)),
        Analyte.K => 2 * 39.0983m / ((2 * 39.0983m) + 15.999m),
        Analyte.Ca => 40.078m / (40.078m + 15.999m),
        Analyte.Mg => 24.305m / (24.305m + 15.999m),
        _ => null,
    };
}
