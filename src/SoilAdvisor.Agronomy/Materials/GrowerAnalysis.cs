using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Agronomy.NitrogenSupply;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>
/// What a label or a laboratory says of a material. It overrides the tables; a figure left out keeps the table's. All figures are percent
/// by mass, 0 to 100.
/// </summary>
/// <param name="N">Total nitrogen, % N.</param>
/// <param name="P2O5">Phosphate, % P2O5: total, unless it lies where labels of this material guarantee the available part.</param>
/// <param name="K2O">Potash, % K2O.</param>
/// <param name="Moisture">Water, % of the material as it is spread; below 100.</param>
/// <param name="Dry">True when the figures refer to dry matter; they are then multiplied by (1 − moisture).</param>
public sealed record GrowerAnalysis(decimal? N, decimal? P2O5, decimal? K2O, decimal? Moisture, bool Dry)
{
    /// <summary>What is said of it as a liming material; null for nothing.</summary>
    public StoneLabel? Stone { get; init; }

    /// <summary>Phosphorus as the element, % P, total; null where it stands as phosphate or not at all. Never both.</summary>
    public decimal? Phosphorus { get; init; }

    /// <summary>Potassium as the element, % K; null where it stands as potash or not at all. Never both.</summary>
    public decimal? Potassium { get; init; }

    /// <summary>Calcium, % Ca.</summary>
    public decimal? Calcium { get; init; }

    /// <summary>Magnesium, % Mg.</summary>
    public decimal? Magnesium { get; init; }

    /// <summary>Sulfur, % S.</summary>
    public decimal? Sulfur { get; init; }

    /// <summary>Sodium, % Na.</summary>
    public decimal? Sodium { get; init; }

    /// <summary>Organic carbon, % C; null where it is not given or follows from the ratio.</summary>
    public decimal? Carbon { get; init; }

    /// <summary>Carbon to nitrogen ratio; with total nitrogen it gives the carbon.</summary>
    public decimal? CarbonToNitrogen { get; init; }

    /// <summary>Metals, total, in dry matter whatever the basis of the rest, as laboratories report them.</summary>
    public IReadOnlyDictionary<Metal, MetalContent> Metals { get; init; } = new Dictionary<Metal, MetalContent>();

    /// <summary>Its salts; null when not tested.</summary>
    public TestedSalt? Salt { get; init; }

    /// <summary>Laboratory or label that printed it; null when not said.</summary>
    public string? From { get; init; }

    /// <summary>Day of the test; null when not said.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Ammonium nitrogen, % NH4-N; null when not tested. Needs the total beside it.</summary>
    public decimal? Ammonium { get; init; }

    /// <summary>Nitrate nitrogen, % NO3-N; null when not tested and then taken as none, which is said. Needs the total beside it.</summary>
    public decimal? Nitrate { get; init; }

    /// <summary>The published factors that the forms of nitrogen are read with; null where none was chosen, and then the total is read.</summary>
    public NitrogenFactors? Factors { get; init; }
}
