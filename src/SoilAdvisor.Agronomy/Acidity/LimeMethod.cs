using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>A published way from a named buffer's pH to a lime requirement. It never takes another buffer's value.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">Title as printed.</param>
/// <param name="Institution">Who issued it.</param>
/// <param name="Regions">ISO 3166-2 codes.</param>
/// <param name="Buffer">The one buffer it was made for.</param>
/// <param name="Kind">Equation or table.</param>
/// <param name="FormulaId">Id of the catalogue formula; null for a table.</param>
/// <param name="Unit">Unit of its result as printed: ton/acre (short ton) or lb/acre.</param>
/// <param name="Basis">What its rate counts.</param>
/// <param name="Depth">Depth the rate is printed for.</param>
/// <param name="Targets">Target pH values it is printed for; empty for any.</param>
/// <param name="BufferFrom">Lowest buffer pH covered; null for none printed.</param>
/// <param name="BufferTo">Highest buffer pH covered; null for none printed.</param>
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
    Procedure Buffer,
    LimeMethodKind Kind,
    string? FormulaId,
    string Unit,
    LimeBasis Basis,
    Length Depth,
    IReadOnlyList<decimal> Targets,
    decimal? BufferFrom,
    decimal? BufferTo,
    bool Interpolate,
    IReadOnlyList<RateParameter> Parameters,
    IReadOnlyList<LimeCell> Cells,
    Citation Source,
    string? Notes)
{
    private const double PoundsInShortTon = 2000;

    /// <summary>Pounds in one of its unit.</summary>
    public double PoundsInUnit => Unit == "ton/acre" ? PoundsInShortTon : 1;
}
