using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

/// <summary>
/// Lime methods for tests of the mechanism: the equations with the coefficients their formulas are published with, and one invented table.
/// Whether the numbers are those of the publications is tested elsewhere.
/// </summary>
internal static class InventedLime
{
    public const string CalciumCarbonateEquivalent = "calcium carbonate equivalent";

    private static readonly Citation Seen = new("invented", null, Evidence.Seen);

    private static readonly Citation Recalled = new("invented", null, Evidence.FromMemory);

    public static readonly LimeMethod NorthCarolina = Equation("north-carolina", Procedure.BufferMehlich, "lime-mehlich-north-carolina", "ton/acre", "agricultural limestone", Seen,
        ("acidity-coefficient", 4), ("buffer-start-ph", 6.6m), ("reference-ph", 6.6m), ("residual-loss-mineral", 8), ("residual-loss-organic", 16));

    public static readonly LimeMethod Pennsylvania = Equation("pennsylvania", Procedure.BufferModifiedMehlich, "lime-modified-mehlich-pennsylvania", "lb/acre", CalciumCarbonateEquivalent, Seen,
        ("rate-per-acidity-target-7-0", 1000), ("rate-per-acidity-target-6-5", 840), ("acidity-limit", 4), ("fixed-rate-target-6-5", 2000)) with { Reads = LimeReads.Acidity };

    public static readonly LimeMethod AdamsEvans = Equation("adams-evans", Procedure.BufferAdamsEvans, "lime-adams-evans", "lb/acre", "agricultural limestone", Recalled,
        ("acidity-coefficient", 8), ("buffer-start-ph", 8), ("saturation-constant", 7.79m), ("saturation-linear", 5.55m), ("saturation-square", 2.27m), ("lime-per-acidity", 1000), ("efficiency-factor", 1.5m), ("cec-limit", 8), ("rate-limit", 5));

    /// <summary>Rows 6.8, 6.4, 6.0 and targets 6.0, 6.5: 0, 400, 1000 and 500, 1500, 3000 lb/acre.</summary>
    public static readonly LimeMethod Table = Equation("table", Procedure.BufferSmp, null, "lb/acre", CalciumCarbonateEquivalent, Recalled) with
    {
        Kind = LimeMethodKind.Table,
        Cells = [Cell(6.8m, 6.0m, 0), Cell(6.8m, 6.5m, 500), Cell(6.4m, 6.0m, 400), Cell(6.4m, 6.5m, 1500), Cell(6.0m, 6.0m, 1000), Cell(6.0m, 6.5m, 3000)],
    };

    public static readonly LimeMethod[] All = [NorthCarolina, Pennsylvania, AdamsEvans, Table];

    public static SoilTest Soil(decimal? ph, decimal? buffer = null, Procedure? name = null, params Reading[] more)
    {
        var readings = new List<Reading>(more);
        if (ph is { } soil)
        {
            readings.Add(new Reading(Analyte.Ph, Amount.Measured(soil), ReportingUnit.PhUnits, Method.By(Procedure.PhWater11), "pH line"));
        }

        if (buffer is { } value)
        {
            readings.Add(new Reading(Analyte.BufferPh, Amount.Measured(value), ReportingUnit.PhUnits, Method.By(name), "buffer line"));
        }

        return new SoilTest("s1", null, null, null, null, null, null, readings, []);
    }

    public static Reading Acidity(decimal value) => new(Analyte.Acidity, Amount.Measured(value), ReportingUnit.MilliequivalentsPer100Grams, default, "acidity line");

    public static Reading Cec(decimal value) => new(Analyte.CationExchangeCapacity, Amount.Measured(value), ReportingUnit.MilliequivalentsPer100Grams, default, "cec line");

    public static TargetPh Target(decimal value, decimal? limeBelow = null) => new(value, "cabbage", limeBelow, Seen);

    public static Answer<LimeRequirement> Lime(SoilTest test, decimal target, LimeMethod? asked = null, string? region = null, IEnumerable<LimeMethod>? methods = null, WorkingSheet? working = null) =>
        LimeRequirementCalculation.For(test, Target(target), methods ?? All, asked, region, [], working);

    private static LimeMethod Equation(string id, Procedure buffer, string? formula, string unit, string basis, Citation source, params (string Symbol, decimal Value)[] parameters) => new(
        id, $"Method {id}", "Nobody", [$"XX-{id}"], LimeReads.BufferPh, [buffer], LimeMethodKind.Equation, formula, unit, LimeBasis.Read(basis).Value, Length.FromInches(6), [], LimeLimits.None, false,
        [.. parameters.Select(p => new RateParameter(p.Symbol, p.Symbol, p.Value, "", source))], [], source, null);

    private static LimeCell Cell(decimal buffer, decimal target, decimal rate) => new(buffer, null, null, [], target, rate, Seen);
}
