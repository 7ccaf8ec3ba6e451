using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.ManureRates;

/// <summary>The rate of a material for nitrogen, from its total nitrogen and the part of it that a crop can use in the season.</summary>
public static class AvailableNitrogenFormulas
{
    /// <summary>Material for a crop's nitrogen; only the part that comes in the season counts.</summary>
    public static Formula<(Rate<AvailableN> Need, MassShare Total, Coefficient Available), MassPerArea> MaterialForNitrogen { get; } = new(
        "material-for-available-nitrogen",
        "Material that supplies available nitrogen",
        "M = N × 100 / (t × f)",
        new Citation("uky-manures", null, Evidence.Seen),
        [
            new(new Symbol("N", "nitrogen needed", "lb/acre", 0), x => x.Need.PoundsPerAcre),
            new(new Symbol("t", "total nitrogen of the material as spread", "%", 0.01, 100), x => x.Total.Percent),
            new(new Symbol("f", "part of it that comes in the season", "", 0.01, 1), x => x.Available.Value),
        ],
        new(new Symbol("M", "material", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<AvailableN>.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1]), new Coefficient(v[2])),
        x => x.Need.Amount * (1 / (x.Total.Fraction * x.Available.Value)));
}
