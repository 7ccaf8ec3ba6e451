using SoilAdvisor.Agronomy.SoilTests;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Sampling;

/// <summary>Invented soil tests of one block.</summary>
internal static class TestPair
{
    public static SoilTest Test(decimal value, string sampled = "2025-10-10", string? lab = "First Laboratory", double? depth = 6, Analyte analyte = Analyte.K, Extractant extractant = Extractant.Mehlich3) =>
        Of(analyte == Analyte.Ph
            ? new Reading(analyte, Amount.Measured(value), ReportingUnit.PhUnits, Method.By(Procedure.PhWater11), "x")
            : new Reading(analyte, Amount.Measured(value), ReportingUnit.MilligramsPerKilogram, Method.Extracted(extractant), "x"), sampled, lab, depth);

    public static SoilTest Of(Reading reading, string sampled = "2025-10-10", string? lab = "First Laboratory", double? depth = 6) => new(
        "block",
        DateOnly.Parse(sampled, System.Globalization.CultureInfo.InvariantCulture),
        lab,
        depth is { } inches ? new SampleDepth(Length.Zero, Length.FromInches(inches)) : null,
        null,
        null,
        null,
        [reading],
        []);
}
