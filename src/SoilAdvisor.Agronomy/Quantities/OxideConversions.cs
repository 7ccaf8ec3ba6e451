using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// The only places where an element becomes its oxide or back. Factors are exact ratios of standard atomic weights
/// (P 30.973762, K 39.0983, Mg 24.305, Ca 40.078, N 14.007, S 32.06, C 12.011, O 15.999).
/// </summary>
public static class OxideConversions
{
    /// <summary>Grams of P2O5 that hold one gram of P: (2 × 30.973762 + 5 × 15.999) / (2 × 30.973762) = 2.2913 (rounded).</summary>
    public const double PhosphateOfPhosphorus = ((2 * 30.973762) + (5 * 15.999)) / (2 * 30.973762);

    /// <summary>Grams of K2O that hold one gram of K: (2 × 39.0983 + 15.999) / (2 × 39.0983) = 1.2046 (rounded).</summary>
    public const double PotashOfPotassium = ((2 * 39.0983) + 15.999) / (2 * 39.0983);

    /// <summary>Grams of MgO that hold one gram of Mg: (24.305 + 15.999) / 24.305 = 1.6583 (rounded).</summary>
    public const double MagnesiaOfMagnesium = (24.305 + Oxygen) / 24.305;

    /// <summary>Grams of CaO that hold one gram of Ca: (40.078 + 15.999) / 40.078 = 1.3992 (rounded).</summary>
    public const double OxideOfCalcium = (40.078 + Oxygen) / 40.078;

    /// <summary>Grams of CaCO3 that hold one gram of Ca: (40.078 + 12.011 + 3 × 15.999) / 40.078 = 2.4973 (rounded).</summary>
    public const double CarbonateOfCalcium = (40.078 + 12.011 + (3 * Oxygen)) / 40.078;

    /// <summary>Grams of NO3 that hold one gram of nitrogen: (14.007 + 3 × 15.999) / 14.007 = 4.4266 (rounded).</summary>
    public const double NitrateOfNitrogen = (14.007 + (3 * Oxygen)) / 14.007;

    /// <summary>Grams of SO4 that hold one gram of sulfur: (32.06 + 4 × 15.999) / 32.06 = 2.9961 (rounded).</summary>
    public const double SulfateOfSulfur = (32.06 + (4 * Oxygen)) / 32.06;

    private const double Oxygen = 15.999;

    private const string ExactRatio = "An exact ratio of atomic weights; what publications print is rounded.";

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

    /// <summary>Mg to MgO on an area.</summary>
    public static Formula<Rate<Mg>, Rate<MgO>> MagnesiumToMagnesia { get; } = new(
        "magnesium-to-magnesia",
        "Magnesium counted as magnesia",
        "MgO = Mg × (24.305 + 15.999) / 24.305",
        Citation.AtomicMasses,
        [new(new Symbol("Mg", "magnesium", "lb/acre", 0), x => x.PoundsPerAcre)],
        new(new Symbol("MgO", "magnesia", "lb/acre"), y => y.PoundsPerAcre),
        v => Rate<Mg>.FromPoundsPerAcre(v[0]),
        x => new Rate<MgO>(x.Amount * MagnesiaOfMagnesium),
        ExactRatio);

    /// <summary>Ca to CaO on an area.</summary>
    public static Formula<Rate<Ca>, Rate<CaO>> CalciumToOxide { get; } = new(
        "calcium-to-oxide",
        "Calcium counted as its oxide",
        "CaO = Ca × (40.078 + 15.999) / 40.078",
        Citation.AtomicMasses,
        [new(new Symbol("Ca", "calcium", "lb/acre", 0), x => x.PoundsPerAcre)],
        new(new Symbol("CaO", "calcium oxide", "lb/acre"), y => y.PoundsPerAcre),
        v => Rate<Ca>.FromPoundsPerAcre(v[0]),
        x => new Rate<CaO>(x.Amount * OxideOfCalcium),
        ExactRatio);

    /// <summary>Ca to CaCO3 on an area: what calcium would be if all of it were carbonate.</summary>
    public static Formula<Rate<Ca>, Rate<CalciumCarbonate>> CalciumToCarbonate { get; } = new(
        "calcium-to-carbonate",
        "Calcium counted as its carbonate",
        "CaCO3 = Ca × (40.078 + 12.011 + 3 × 15.999) / 40.078",
        Citation.AtomicMasses,
        [new(new Symbol("Ca", "calcium", "lb/acre", 0), x => x.PoundsPerAcre)],
        new(new Symbol("CaCO3", "calcium carbonate", "lb/acre"), y => y.PoundsPerAcre),
        v => Rate<Ca>.FromPoundsPerAcre(v[0]),
        x => new Rate<CalciumCarbonate>(x.Amount * CarbonateOfCalcium),
        ExactRatio);

    /// <summary>NO3 to NO3-N in soil.</summary>
    public static Formula<SoilContent<Nitrate>, SoilContent<NitrateNitrogen>> NitrateToNitrateNitrogen { get; } = new(
        "nitrate-to-nitrate-nitrogen",
        "Nitrate counted as nitrogen",
        "N = NO3 × 14.007 / (14.007 + 3 × 15.999)",
        Citation.AtomicMasses,
        [new(new Symbol("NO3", "nitrate", "mg/kg", 0), x => x.MilligramsPerKilogram)],
        new(new Symbol("N", "nitrogen of nitrate", "mg/kg"), y => y.MilligramsPerKilogram),
        v => SoilContent<Nitrate>.FromMilligramsPerKilogram(v[0]),
        x => SoilContent<NitrateNitrogen>.FromMilligramsPerKilogram(x.MilligramsPerKilogram / NitrateOfNitrogen),
        ExactRatio);

    /// <summary>SO4 to SO4-S in soil.</summary>
    public static Formula<SoilContent<Sulfate>, SoilContent<SulfateSulfur>> SulfateToSulfur { get; } = new(
        "sulfate-to-sulfur",
        "Sulfate counted as sulfur",
        "S = SO4 × 32.06 / (32.06 + 4 × 15.999)",
        Citation.AtomicMasses,
        [new(new Symbol("SO4", "sulfate", "mg/kg", 0), x => x.MilligramsPerKilogram)],
        new(new Symbol("S", "sulfur of sulfate", "mg/kg"), y => y.MilligramsPerKilogram),
        v => SoilContent<Sulfate>.FromMilligramsPerKilogram(v[0]),
        x => SoilContent<SulfateSulfur>.FromMilligramsPerKilogram(x.MilligramsPerKilogram / SulfateOfSulfur),
        ExactRatio);
}
