using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>A published largest single dose of lime, and the wait to the next.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">Who prints it, and for what.</param>
/// <param name="Region">ISO 3166-2 code; null for none named.</param>
/// <param name="OnSurface">True where the lime is not worked in.</param>
/// <param name="Ground">beds, field, grassland or lawn.</param>
/// <param name="SoilGroups">Textures it is for; empty for all.</param>
/// <param name="Largest">The dose as printed.</param>
/// <param name="Unit">lb/100-sq-ft, lb/1000-sq-ft, ton/acre, t/ha, or t-cao/ha which counts calcium oxide.</param>
/// <param name="MonthsFrom">Least months to the next dose; null where none is printed.</param>
/// <param name="MonthsTo">Most months to the next dose; null where none is printed.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record DoseLimit(
    string Id,
    string Title,
    string? Region,
    bool OnSurface,
    string Ground,
    IReadOnlyList<SoilGroup> SoilGroups,
    decimal Largest,
    string Unit,
    int? MonthsFrom,
    int? MonthsTo,
    Citation Source,
    string? Note)
{
    private const double PoundsInShortTon = 2000;

    // 100.09 / 56.08: calcium carbonate for one calcium oxide.
    private const double CarbonateForOxide = 100.09 / 56.08;

    /// <summary>The dose as mass of a stone.</summary>
    /// <param name="neutralisingValue">Neutralising value of the stone; only a limit that counts calcium oxide uses it.</param>
    public MassPerArea Of(MassShare neutralisingValue) => Unit switch
    {
        "lb/100-sq-ft" => MassPerArea.FromPoundsPer1000SquareFeet((double)Largest * 10),
        "lb/1000-sq-ft" => MassPerArea.FromPoundsPer1000SquareFeet((double)Largest),
        "ton/acre" => MassPerArea.FromPoundsPerAcre((double)Largest * PoundsInShortTon),
        "t/ha" => MassPerArea.FromKilogramsPerHectare((double)Largest * 1000),
        "t-cao/ha" => MassPerArea.FromKilogramsPerHectare((double)Largest * 1000 * CarbonateForOxide / neutralisingValue.Fraction),
        _ => throw new InvalidOperationException($"No dose is counted in {Unit}."),
    };
}
