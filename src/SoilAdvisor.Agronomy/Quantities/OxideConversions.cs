using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// The only places where an element becomes its oxide or back. Factors are exact ratios of standard atomic weights
/// (P 30.973762, K 39.0983, O 15.999).
/// </summary>
public static class OxideConversions
{
    /// <summary>Grams of P2O5 that hold one gram of P: (2 × 30.973762 + 5 × 15.999) / (2 × 30.973762) = 2.2913 (rounded).</summary>
    public const double PhosphateOfPhosphorus = ((2 * 30.973762) + (5 * 15.999)) / (2 * 30.973762);

    /// <summary>Grams of K2O that hold one gram of K: (2 × 39.0983 + 15.999) / (2 × 39.0983) = 1.2046 (rounded).</summary>
    public const double PotashOfPotassium = ((2 * 39.0983) + 15.999) / (2 * 39.0983);

    /// <summary>P to P2O5 on an area.</summary>
    public static Formula<Rate<P>, Rate<TotalP2O5>> PhosphorusToPhosphate { get; } = new(
        "phosphorus-to-phosphate",
        "Phosphorus counted as phosphate",
        "P2O5 = P × (2 × 30.973762 + 5 × 15.999) / (2 × 30.973762)",
        Citation.AtomicMasses,
        [new(new Symbol("P", "phosphorus", "lb/acre", 0), x => x.PoundsPerAcre)],
        new(new Symbol("P2O5", "phosphate", "lb/acre"), y => y.PoundsPerAcre),
        v => Rate<P>.FromPoundsPerAcre(v[0]),
        x => new Rate<TotalP2O5>(x.Amount * PhosphateOfPhosphorus));

    /// <summary>K to K2O on an area.</summary>
    public static Formula<Rate<K>, Rate<K2O>> PotassiumToPotash { get; } = new(
        "potassium-to-potash",
        "Potassium counted as potash",
        "K2O = K × (2 × 39.0983 + 15.999) / (2 × 39.0983)",
        Citation.AtomicMasses,
        [new(new Symbol("K", "potassium", "lb/acre", 0), x => x.PoundsPerAcre)],
        new(new Symbol("K2O", "potash", "lb/acre"), y => y.PoundsPerAcre),
        v => Rate<K>.FromPoundsPerAcre(v[0]),
        x => new Rate<K2O>(x.Amount * PotashOfPotassium));
}
