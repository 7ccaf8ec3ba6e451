using System.Globalization;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>
/// What a reading cannot be, and the units it comes in. Limits that physics sets (pH, percent, below zero) and wide limits of our own that
/// catch a slipped digit or a swapped column; they rate nothing.
/// </summary>
public static class ReadingLimits
{
    private static readonly ReportingUnit[] Acidities = [ReportingUnit.PhUnits];
    private static readonly ReportingUnit[] Percents = [ReportingUnit.Percent];
    private static readonly ReportingUnit[] Charges = [ReportingUnit.MilliequivalentsPer100Grams, ReportingUnit.MilliequivalentsPer100CubicCentimetres];
    private static readonly ReportingUnit[] Conductivities = [ReportingUnit.DecisiemensPerMetre];

    private static readonly ReportingUnit[] Capacities = [ReportingUnit.MilligramsPerKilogramAndPh];

    private static readonly ReportingUnit[] Extracts =
    [
        ReportingUnit.MilligramsPerKilogram, ReportingUnit.MilligramsPerCubicDecimetre, ReportingUnit.PoundsPerAcre,
        ReportingUnit.KilogramsPerHectare, ReportingUnit.Index,
    ];

    private static readonly ReportingUnit[] Cations = [.. Extracts, .. Charges];

    /// <summary>Units an analyte is reported in.</summary>
    /// <param name="analyte">The analyte.</param>
    public static IReadOnlyList<ReportingUnit> UnitsOf(Analyte analyte) => analyte switch
    {
        Analyte.Ph or Analyte.BufferPh => Acidities,
        Analyte.OrganicMatter => Percents,
        Analyte.CationExchangeCapacity or Analyte.Acidity => Charges,
        Analyte.LimeBufferCapacity => Capacities,
        Analyte.ElectricalConductivity => Conductivities,
        Analyte.K or Analyte.Ca or Analyte.Mg or Analyte.Na => Cations,
        _ => Extracts,
    };

    /// <summary>Whether its number depends on the solution that the soil was shaken with.</summary>
    /// <param name="analyte">The analyte.</param>
    public static bool TakesExtractant(Analyte analyte) => UnitsOf(analyte) is var units && (ReferenceEquals(units, Extracts) || ReferenceEquals(units, Cations));

    /// <summary>Why an amount cannot be; null when it can.</summary>
    /// <param name="analyte">The analyte.</param>
    /// <param name="amount">The amount.</param>
    /// <param name="unit">Its unit.</param>
    public static Refusal? WhyImpossible(Analyte analyte, Amount amount, ReportingUnit unit)
    {
        var name = Words.Analytes.IdOf(analyte);
        var shown = string.Create(CultureInfo.InvariantCulture, $"{name} is {amount.Number} {Words.Units.IdOf(unit)}");
        if (unit == ReportingUnit.PhUnits)
        {
            return amount.Number is >= 0 and <= 14
                ? null
                : new Refusal("ph-range", string.Create(CultureInfo.InvariantCulture, $"{name} is {amount.Number}; pH runs from 0 to 14."), "Check for a slipped decimal point or a swapped column.");
        }

        if (amount.Number < 0)
        {
            return new Refusal("negative-value", $"{shown}; it cannot be below 0.", "Check the sign. A result below detection is written with the comparator \"<\".");
        }

        return MostOf(analyte, unit) is { } most && amount.Number > most
            ? new Refusal("impossible-value", string.Create(CultureInfo.InvariantCulture, $"{shown}; more than {most} {Words.Units.IdOf(unit)} is not possible in a soil test."), "Check the number, its unit and its column.")
            : null;
    }

    private static decimal? MostOf(Analyte analyte, ReportingUnit unit) => unit switch
    {
        ReportingUnit.Percent => 100,
        ReportingUnit.MilliequivalentsPer100Grams or ReportingUnit.MilliequivalentsPer100CubicCentimetres => 300,
        ReportingUnit.DecisiemensPerMetre => 200,
        ReportingUnit.MilligramsPerKilogramAndPh => 10_000,
        ReportingUnit.MilligramsPerKilogram or ReportingUnit.MilligramsPerCubicDecimetre => analyte is Analyte.Ca or Analyte.Mg ? 100_000 : 10_000,
        ReportingUnit.PoundsPerAcre or ReportingUnit.KilogramsPerHectare => analyte is Analyte.Ca or Analyte.Mg ? 200_000 : 20_000,
        _ => null,
    };
}
