using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>A published way to a lime requirement, with the limits it is published for. It never takes another buffer's value.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">Title as printed.</param>
/// <param name="Institution">Who issued it.</param>
/// <param name="Regions">ISO 3166 codes.</param>
/// <param name="Reads">What it takes the amount from.</param>
/// <param name="Buffers">The buffers it was made for; empty for a method that reads none.</param>
/// <param name="Kind">Equation, equations by target, table, or known only to the laboratory.</param>
/// <param name="FormulaId">Id of the catalogue formula; null for a table.</param>
/// <param name="Unit">Unit of its result as printed, one of <see cref="LimeRateUnits"/>.</param>
/// <param name="Basis">What its rate counts.</param>
/// <param name="Depth">Depth the rate is printed for.</param>
/// <param name="Targets">Target pH values it is printed for; empty for any.</param>
/// <param name="Limits">Soils, pH and buffer pH it is published for.</param>
/// <param name="Interpolate">True only where the publication allows values between cells.</param>
/// <param name="Parameters">Coefficients of the equation.</param>
/// <param name="Cells">Cells of the table.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Notes">Decisions; null for none.</param>
public sealed record LimeMethod(
    string Id,
    string Title,
    string Institution,
    IReadOnlyList<string> Regions,
    LimeReads Reads,
    IReadOnlyList<Procedure> Buffers,
    LimeMethodKind Kind,
    string? FormulaId,
    string Unit,
    LimeBasis Basis,
    Length Depth,
    IReadOnlyList<decimal> Targets,
    LimeLimits Limits,
    bool Interpolate,
    IReadOnlyList<RateParameter> Parameters,
    IReadOnlyList<LimeCell> Cells,
    Citation Source,
    string? Notes)
{
    /// <summary>One equation for each target pH; empty for another kind.</summary>
    public IReadOnlyList<LimeTargetEquation> Equations { get; init; } = [];

    /// <summary>What the rows of its table stand for.</summary>
    public LimeRows Rows { get; init; }

    /// <summary>Scale of the soil pH that it reads: null for water; otherwise the salt solution.</summary>
    public Procedure? SaltScale { get; init; }

    /// <summary>True for a table of texture and pH: no buffer stands behind it, so its rate is rough.</summary>
    public bool IsRough => Reads == LimeReads.SoilPh && Kind == LimeMethodKind.Table;

    /// <summary>One of its unit as mass per area.</summary>
    public MassPerArea One => LimeRateUnits.One(Unit) ?? throw new InvalidOperationException($"{Id}: the loader lets no unknown unit {Unit} pass.");
}
