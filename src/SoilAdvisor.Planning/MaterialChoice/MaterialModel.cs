using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>
/// The choice of materials for one bed as a linear programme in the words of the trade: what may be spread, what must and must not be
/// supplied, and what counts as a burden. Pure data; per area of ground, so the size of the bed does not enter.
/// </summary>
/// <param name="Variables">What may be spread, in the order offered.</param>
/// <param name="Requirements">Floors and ceilings.</param>
/// <param name="Excesses">Supply that is allowed and unwanted.</param>
/// <param name="SharedLimits">Largest single rates that plantings of the same day share.</param>
/// <param name="Priced">
/// True when at least one offered material has a price: then money is minimised, with a small stated burden for excess and for mass.
/// False: least excess, then least mass.
/// </param>
internal sealed record MaterialModel(
    IReadOnlyList<MaterialVariable> Variables,
    IReadOnlyList<Requirement> Requirements,
    IReadOnlyList<Excess> Excesses,
    IReadOnlyList<SharedLimit> SharedLimits,
    bool Priced)
{
    /// <summary>Money that one pound of excess counts as where the farm says nothing else. Ours, printed with every plan.</summary>
    public const double ExcessBurden = 0.05;

    /// <summary>Money that one pound of material counts as, so that of two equal plans the lighter one is taken. Ours, printed.</summary>
    public const double MassBurden = 0.0005;

    /// <summary>Money that one pound of excess counts as, beside the cost of materials.</summary>
    public double ExcessPenalty { get; init; } = ExcessBurden;

    /// <summary>True when nothing has to be supplied.</summary>
    public bool NeedsNothing => !Requirements.Any(r => r.AsksForSomething);

    /// <summary>The burden of given rates: first what is minimised first, then what decides between equals.</summary>
    /// <param name="solution">The rates.</param>
    public (double First, double Second) BurdenOf(MaterialSolution solution)
    {
        var (money, mass) = (0.0, 0.0);
        for (var i = 0; i < Variables.Count; i++)
        {
            mass += solution.Amounts[i].PoundsPerAcre;
            money += solution.Amounts[i].PoundsPerAcre * PricePerPound(Variables[i]);
        }

        var excess = Excesses.Sum(e => Math.Max(0, SupplyOf(e.Nutrient, null, solution).PoundsPerAcre - e.Above.PoundsPerAcre));
        return Priced ? (money + (ExcessPenalty * excess) + (MassBurden * mass), 0) : (excess, mass);
    }

    /// <summary>What given rates supply of a nutrient.</summary>
    /// <param name="nutrient">The nutrient.</param>
    /// <param name="planting">The planting; null for the season.</param>
    /// <param name="solution">The rates.</param>
    public MassPerArea SupplyOf(Nutrient nutrient, int? planting, MaterialSolution solution)
    {
        var supply = default(MassPerArea);
        for (var i = 0; i < Variables.Count; i++)
        {
            if (planting is null || Variables[i].PlantingIndex == planting)
            {
                supply += solution.Amounts[i] * Variables[i].Share(nutrient);
            }
        }

        return supply;
    }

    /// <summary>Price of one pound; 0 for a material without a price, which is on hand.</summary>
    /// <param name="variable">The variable.</param>
    public static double PricePerPound(MaterialVariable variable) => PricePerPound(variable.Offered);

    /// <summary>Price of one pound; 0 for a material without a price, which is on hand.</summary>
    /// <param name="offered">The material.</param>
    public static double PricePerPound(Agronomy.Materials.OfferedMaterial offered) =>
        offered.PricePerKilogram is { } price ? (double)price.Value * UnitsNet.Mass.FromPounds(1).Kilograms : 0;
}
