using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>Every published spread that is held.</summary>
/// <param name="Spreads">The rows, in the order of the table.</param>
public sealed record Variability(IReadOnlyList<Spread> Spreads)
{
    /// <summary>The row for a use: the one of the very extractant before the one for any; null where nothing is held.</summary>
    /// <param name="analyte">Of what.</param>
    /// <param name="extractant">By which extractant; null for none.</param>
    /// <param name="use">For what.</param>
    public Spread? For(Analyte analyte, Extractant? extractant, SpreadUse use)
    {
        Spread? any = null;
        foreach (var spread in Spreads)
        {
            if (spread.Analyte != analyte || spread.Use != use)
            {
                continue;
            }

            if (spread.Extractant is null)
            {
                any ??= spread;
            }
            else if (spread.Extractant == extractant)
            {
                return spread;
            }
        }

        return any;
    }
}
