using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// Published indices that a guide rates in place of a single reading. pH is pH in water throughout. The three measures of phosphorus saturation
/// count by moles over both metals, by mass over aluminium, and by moles over half of both metals: their numbers cannot stand for each other.
/// </summary>
public static class IndexFormulas
{
    private const string Recalled = "The equation is recalled; no publication with it was read.";

    // Standard atomic masses to the digits in which the ratio is printed.
    private const double Phosphorus = 30.97;
    private const double Aluminium = 26.98;
    private const double Iron = 55.85;

    /// <summary>Phosphorus saturation ratio by Mehlich-3, molar.</summary>
    public static Formula<(SoilConcentration P, SoilConcentration Al, SoilConcentration Fe), SoilIndex<PhosphorusSaturationRatio>> PhosphorusSaturationRatio { get; } = new(
        "phosphorus-saturation-ratio-mehlich-3",
        "Phosphorus saturation ratio, Mehlich-3, molar",
        "PSR = (P / 30.97) / (Al / 26.98 + Fe / 55.85)",
        new Citation("sims2002", "Abstract; the molar form is recalled", Evidence.FromMemory),
        [
            new(new Symbol("P", "Mehlich-3 phosphorus", "mg/kg", 0), x => x.P.MilligramsPerKilogram),
            new(new Symbol("Al", "Mehlich-3 aluminium of the same extract", "mg/kg", 0), x => x.Al.MilligramsPerKilogram),
            new(new Symbol("Fe", "Mehlich-3 iron of the same extract", "mg/kg", 0), x => x.Fe.MilligramsPerKilogram),
        ],
        new(new Symbol("PSR", "phosphorus saturation ratio", "index"), y => y.Value),
        v => (Mass(v[0]), Mass(v[1]), Mass(v[2])),
        x => new(x.P.MilligramsPerKilogram / Phosphorus / ((x.Al.MilligramsPerKilogram / Aluminium) + (x.Fe.MilligramsPerKilogram / Iron))),
        "The abstract prints the limits; no worked ratio was read.");

    /// <summary>Phosphorus over aluminium by Mehlich-3, by mass, in percent.</summary>
    public static Formula<(SoilConcentration P, SoilConcentration Al), SoilIndex<PhosphorusToAluminium>> PhosphorusToAluminium { get; } = new(
        "phosphorus-to-aluminium-quebec",
        "Phosphorus to aluminium, Mehlich-3, Quebec, by mass",
        "ISP = 100 × P / Al",
        new Citation("qc-rea", "Annexe I; the form of the ratio as the rows use it", Evidence.FromMemory),
        [
            new(new Symbol("P", "Mehlich-3 phosphorus", "mg/kg", 0), x => x.P.MilligramsPerKilogram),
            new(new Symbol("Al", "Mehlich-3 aluminium of the same extract", "mg/kg", 0), x => x.Al.MilligramsPerKilogram),
        ],
        new(new Symbol("ISP", "phosphorus saturation, P/Al by mass", "%"), y => y.Value),
        v => (Mass(v[0]), Mass(v[1])),
        x => new(100 * x.P.MilligramsPerKilogram / x.Al.MilligramsPerKilogram),
        Recalled);

    /// <summary>Degree of phosphorus saturation by oxalate, in percent.</summary>
    public static Formula<(AmountOfSubstance P, AmountOfSubstance Al, AmountOfSubstance Fe), SoilIndex<OxalatePhosphorusSaturation>> OxalatePhosphorusSaturation { get; } = new(
        "phosphorus-saturation-oxalate",
        "Degree of phosphorus saturation, ammonium oxalate",
        "DPS = 100 × P / (0.5 × (Al + Fe))",
        new Citation("maguire-sims-2002", "Figure 4, caption", Evidence.Seen),
        [
            new(new Symbol("P", "oxalate phosphorus", "mmol/kg", 0), x => x.P.MillimolesPerKilogram),
            new(new Symbol("Al", "oxalate aluminium", "mmol/kg", 0), x => x.Al.MillimolesPerKilogram),
            new(new Symbol("Fe", "oxalate iron", "mmol/kg", 0), x => x.Fe.MillimolesPerKilogram),
        ],
        new(new Symbol("DPS", "degree of phosphorus saturation", "%"), y => y.Value),
        v => (AmountOfSubstance.FromMillimolesPerKilogram(v[0]), AmountOfSubstance.FromMillimolesPerKilogram(v[1]), AmountOfSubstance.FromMillimolesPerKilogram(v[2])),
        x => new(100 * x.P.MillimolesPerKilogram / (0.5 * (x.Al.MillimolesPerKilogram + x.Fe.MillimolesPerKilogram))),
        "The caption prints the equation without a worked example.");

    /// <summary>Manganese activity index, New Jersey.</summary>
    public static Formula<(SoilConcentration Mn, SoilPh Ph), SoilIndex<NewJerseyManganeseActivity>> ManganeseActivityNewJersey { get; } = new(
        "manganese-activity-new-jersey",
        "Manganese activity index, New Jersey",
        "MnAI = 101.7 + 3.75 × Mn − 15.2 × pH",
        new Citation("nj-rl", "Manganese activity index", Evidence.Seen),
        [new(new Symbol("Mn", "Mehlich-3 manganese", "mg/kg", 0), x => x.Mn.MilligramsPerKilogram), Ph<SoilConcentration>()],
        new(new Symbol("MnAI", "manganese activity index", "index"), y => y.Value),
        v => (Mass(v[0]), new SoilPh(v[1])),
        x => new(101.7 + (3.75 * x.Mn.MilligramsPerKilogram) - (15.2 * x.Ph.Value)),
        "The page prints the equation without a worked example.");

    /// <summary>Manganese availability index for crops that need much manganese, North Carolina.</summary>
    public static Formula<(SoilIndex<NorthCarolinaTestIndex> Mn, SoilPh Ph), SoilIndex<NorthCarolinaManganeseAvailability>> ManganeseAvailabilitySensitiveCrops { get; } = new(
        "manganese-availability-north-carolina-a",
        "Manganese availability index, North Carolina, equation A",
        "MnAI = 101.2 + 0.6 × MnI − 15.2 × pH",
        new Citation("nc-mnai", "Table 2.3, footnotes, equation A", Evidence.Seen),
        [new(new Symbol("MnI", "manganese index of the laboratory", "index", 0), x => x.Mn.Value), Ph<SoilIndex<NorthCarolinaTestIndex>>()],
        new(new Symbol("MnAI", "manganese availability index", "index"), y => y.Value),
        v => (new(v[0]), new SoilPh(v[1])),
        x => new(101.2 + (0.6 * x.Mn.Value) - (15.2 * x.Ph.Value)),
        "The page prints the equation without a worked example.");

    /// <summary>Manganese availability index for other crops, North Carolina.</summary>
    public static Formula<(SoilIndex<NorthCarolinaTestIndex> Mn, SoilPh Ph), SoilIndex<NorthCarolinaManganeseAvailability>> ManganeseAvailabilityOtherCrops { get; } = new(
        "manganese-availability-north-carolina-b",
        "Manganese availability index, North Carolina, equation B",
        "MnAI = 108.2 + 0.6 × MnI − 15.2 × pH",
        new Citation("nc-circ1", "Table 2.3, footnotes, equation B", Evidence.FromMemory),
        [new(new Symbol("MnI", "manganese index of the laboratory", "index", 0), x => x.Mn.Value), Ph<SoilIndex<NorthCarolinaTestIndex>>()],
        new(new Symbol("MnAI", "manganese availability index", "index"), y => y.Value),
        v => (new(v[0]), new SoilPh(v[1])),
        x => new(108.2 + (0.6 * x.Mn.Value) - (15.2 * x.Ph.Value)),
        Recalled);

    /// <summary>Zinc index, Ontario.</summary>
    public static Formula<(SoilConcentrationByVolume Zn, SoilPh Ph), SoilIndex<OntarioZincIndex>> ZincOntario { get; } = new(
        "zinc-index-ontario",
        "Zinc index, Ontario",
        "ZnI = 203 + 4.5 × Zn − 50.7 × pH + 3.33 × pH²",
        new Citation("on-pub811", "Chapter 9", Evidence.FromMemory),
        [new(new Symbol("Zn", "DTPA zinc", "mg/dm3", 0), x => x.Zn.MilligramsPerCubicDecimetre), Ph<SoilConcentrationByVolume>()],
        new(new Symbol("ZnI", "zinc index", "index"), y => y.Value),
        v => (Volume(v[0]), new SoilPh(v[1])),
        x => new(203 + (4.5 * x.Zn.MilligramsPerCubicDecimetre) - (50.7 * x.Ph.Value) + (3.33 * x.Ph.Value * x.Ph.Value)),
        Recalled);

    /// <summary>Manganese index, Ontario.</summary>
    public static Formula<(SoilConcentrationByVolume Mn, SoilPh Ph), SoilIndex<OntarioManganeseIndex>> ManganeseOntario { get; } = new(
        "manganese-index-ontario",
        "Manganese index, Ontario",
        "MnI = 498 + 0.248 × Mn − 137 × pH + 9.64 × pH²",
        new Citation("on-pub811", "Chapter 9", Evidence.FromMemory),
        [new(new Symbol("Mn", "phosphoric-acid manganese", "mg/dm3", 0), x => x.Mn.MilligramsPerCubicDecimetre), Ph<SoilConcentrationByVolume>()],
        new(new Symbol("MnI", "manganese index", "index"), y => y.Value),
        v => (Volume(v[0]), new SoilPh(v[1])),
        x => new(498 + (0.248 * x.Mn.MilligramsPerCubicDecimetre) - (137 * x.Ph.Value) + (9.64 * x.Ph.Value * x.Ph.Value)),
        Recalled);

    private static FormulaInput<(TTest Test, SoilPh Ph)> Ph<TTest>() => new(new Symbol("pH", "soil pH in water", "pH", 0, 14), x => x.Ph.Value);

    private static SoilConcentration Mass(double value) => SoilConcentration.FromMilligramsPerKilogram(value);

    private static SoilConcentrationByVolume Volume(double value) => SoilConcentrationByVolume.FromMilligramsPerCubicDecimetre(value);
}
