using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>
/// What one unit of mass, as it is spread, supplies in the season of spreading. Availability is already in it, each with its citation.
/// </summary>
/// <param name="Planned">Share by mass of each nutrient that the plan counts on (low end of published ranges).</param>
/// <param name="High">Share by mass at the high end of published ranges.</param>
/// <param name="Sources">Citation of each figure used, by nutrient, in the order of use.</param>
/// <param name="Assumptions">What was assumed, for example a moisture.</param>
public sealed record MaterialAnalysis(
    IReadOnlyDictionary<Nutrient, double> Planned,
    IReadOnlyDictionary<Nutrient, double> High,
    IReadOnlyDictionary<Nutrient, IReadOnlyList<Citation>> Sources,
    IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>What its label says of it as a liming material; null for nothing.</summary>
    public StoneLabel? Label { get; init; }

    /// <summary>Its nitrogen by form; null when no figure of its total nitrogen is held.</summary>
    public NitrogenContent? Nitrogen { get; init; }

    /// <summary>Its dry matter, %; null when not known.</summary>
    public decimal? DryMatter { get; init; }

    /// <summary>Its carbon to nitrogen ratio by test; null where the tables' figure stands.</summary>
    public decimal? CarbonToNitrogen { get; init; }

    /// <summary>Planned share of a nutrient; 0 when the tables hold no figure (unknown counts as nothing toward a need, and is said).</summary>
    /// <param name="nutrient">Which.</param>
    public double Share(Nutrient nutrient) => Planned.TryGetValue(nutrient, out var share) ? share : 0;

    /// <summary>What a rate of the material supplies, by the planned shares.</summary>
    /// <param name="rate">Rate of the material.</param>
    public NutrientVector Supplies(MassPerArea rate)
    {
        var supplied = NutrientVector.Zero;
        foreach (var (nutrient, share) in Planned)
        {
            supplied = supplied.With(nutrient, rate * share);
        }

        return supplied;
    }
}
