namespace SoilAdvisor.Api.Formulas;

/// <summary>
/// An equation over a series takes more members than it shows: each symbol again with the next number (Q3, M3, …).
/// </summary>
/// <param name="Least">Fewest members; so many are shown.</param>
/// <param name="Most">Most members.</param>
internal sealed record SeriesEntry(int Least, int Most)
{
    public static SeriesEntry? Of(IFormula formula) => formula.Series is var (least, most) ? new(least, most) : null;
}
