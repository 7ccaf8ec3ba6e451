using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>
/// How much of each cation carries one milliequivalent in 100 g (or, by volume, 100 cm3) of soil. Laboratories round it differently, and
/// magnesium moves by more than a hundredth, so an answer names the set it used.
/// </summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Unit">mg/kg, which serves mg/dm3 by volume alike, or lb/acre where the laboratory prints it so.</param>
/// <param name="Calcium">Calcium, above zero.</param>
/// <param name="Magnesium">Magnesium, above zero.</param>
/// <param name="Potassium">Potassium, above zero.</param>
/// <param name="Sodium">Sodium, above zero.</param>
/// <param name="Source">Where the set stands.</param>
public sealed record MilliequivalentWeights(
    string Id,
    string Title,
    ReportingUnit Unit,
    decimal Calcium,
    decimal Magnesium,
    decimal Potassium,
    decimal Sodium,
    Citation Source)
{
    /// <summary>The weight of one cation.</summary>
    /// <param name="cation">Ca, Mg, K or Na.</param>
    public decimal Of(Analyte cation) => cation switch
    {
        Analyte.Ca => Calcium,
        Analyte.Mg => Magnesium,
        Analyte.K => Potassium,
        Analyte.Na => Sodium,
        _ => throw new ArgumentOutOfRangeException(nameof(cation), "Only Ca, Mg, K and Na are summed."),
    };
}
