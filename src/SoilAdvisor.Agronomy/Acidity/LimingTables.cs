using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Acidity.Sulfur;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Published figures from a requirement to what is spread: indexes of stone, doses, magnesium cut-offs, sulfur.</summary>
/// <param name="Figures">Figures of materials and of liming.</param>
/// <param name="SieveOpenings">Opening in millimetres by sieve number.</param>
/// <param name="Indexes">Indexes of effective value.</param>
/// <param name="DoseLimits">Largest single doses.</param>
/// <param name="MagnesiumCutOffs">Soil magnesium below which dolomitic stone is preferred.</param>
/// <param name="SulfurCells">Cells of the sulfur table.</param>
/// <param name="SulfurFigures">Figures of the other sulfur rules.</param>
public sealed record LimingTables(
    IReadOnlyList<LimingFigure> Figures,
    IReadOnlyDictionary<int, decimal> SieveOpenings,
    IReadOnlyList<LimeIndex> Indexes,
    IReadOnlyList<DoseLimit> DoseLimits,
    IReadOnlyList<MagnesiumCutOff> MagnesiumCutOffs,
    IReadOnlyList<SulfurCell> SulfurCells,
    IReadOnlyList<SulfurFigure> SulfurFigures)
{
    /// <summary>A figure; null when none is held.</summary>
    /// <param name="subject">Kebab-case subject.</param>
    /// <param name="property">Kebab-case property.</param>
    public LimingFigure? FigureOf(string subject, string property) => Figures.FirstOrDefault(f => f.Subject == subject && f.Property == property);
}
