using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>
/// From extracted cations to exchange capacity and saturation, by the sum. The weights of a milliequivalent and the coefficients of the
/// buffers come from reference-tables/cations. Mass and volume of soil are types of their own and never meet.
/// </summary>
public static class CationFormulas
{
    private const string NoVolumeExample = "No publication that was read works an example by volume of soil.";

    private static readonly Citation Clemson = new("clemson-cec", null, Evidence.Seen);

    /// <summary>Charge of a cation from mg/kg.</summary>
    public static Formula<(SoilConcentration Content, SoilConcentration Weight), Charge<PerMass>> ChargeByMass { get; } = OfCation<SoilConcentration, PerMass>(
        "cation-charge",
        "Charge of a cation",
        "mg/kg",
        x => x.MilligramsPerKilogram,
        SoilConcentration.FromMilligramsPerKilogram,
        null);

    /// <summary>Charge of a cation from lb/acre, by a laboratory that prints its weights in lb/acre.</summary>
    public static Formula<(MassPerArea Content, MassPerArea Weight), Charge<PerMass>> ChargeByAcre { get; } = OfCation<MassPerArea, PerMass>(
        "cation-charge-of-acre",
        "Charge of a cation from pounds an acre",
        "lb/acre",
        x => x.PoundsPerAcre,
        MassPerArea.FromPoundsPerAcre,
        null);

    /// <summary>Charge of a cation from mg/dm3.</summary>
    public static Formula<(VolumeConcentration Content, VolumeConcentration Weight), Charge<PerVolume>> ChargeByVolume { get; } = OfCation<VolumeConcentration, PerVolume>(
        "cation-charge-by-volume",
        "Charge of a cation, by volume of soil",
        "mg/dm3",
        x => x.MilligramsPerCubicDecimetre,
        VolumeConcentration.FromMilligramsPerCubicDecimetre,
        NoVolumeExample);

    /// <summary>From a charge back to mg/kg.</summary>
    public static Formula<(Charge<PerMass> Charge, SoilConcentration Weight), SoilConcentration> ContentOfCharge { get; } = new(
        "cation-content-of-charge",
        "Cation in mg/kg from its charge",
        "c = q × w",
        Citation.AtomicMasses,
        [
            new(Of("q", "charge of the cation", PerMass.Unit), x => x.Charge.Milliequivalents),
            new(new Symbol("w", $"that cation in 1 {PerMass.Unit}", "mg/kg", 1), x => x.Weight.MilligramsPerKilogram),
        ],
        new(new Symbol("c", "cation", "mg/kg"), y => y.MilligramsPerKilogram),
        v => (Mass(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1])),
        x => SoilConcentration.FromMilligramsPerKilogram(x.Charge.Milliequivalents * x.Weight.MilligramsPerKilogram),
        "The other way round of a published division; no publication that was read works it.");

    /// <summary>Acidity by the Moore-Sikora buffer. A buffer at or above its start shows none.</summary>
    public static Formula<(Coefficient PerUnit, BufferPh<MooreSikoraBuffer> Start, BufferPh<MooreSikoraBuffer> Buffer), BufferAcidity<MooreSikoraBuffer>> AcidityMooreSikora { get; } =
        OfBuffer<MooreSikoraBuffer, PerMass>("acidity-moore-sikora", "Acidity by the Moore-Sikora buffer", "Moore-Sikora buffer pH", Clemson, null);

    /// <summary>Acidity by the SMP buffer. A buffer at or above the pH where it counts none shows none.</summary>
    public static Formula<(Coefficient PerUnit, BufferPh<SmpBuffer> Start, BufferPh<SmpBuffer> Buffer), BufferAcidity<SmpBuffer>> AciditySmp { get; } =
        OfBuffer<SmpBuffer, PerMass>(
            "acidity-smp",
            "Acidity by the SMP buffer",
            "SMP buffer pH",
            new Citation("mem-ncr221", null, Evidence.FromMemory),
            "The equation is recalled; no publication that names the buffer beside it was read.");

    /// <summary>Sum of the bases, by mass of soil.</summary>
    public static Formula<(Charge<PerMass> Calcium, Charge<PerMass> Magnesium, Charge<PerMass> Potassium, Charge<PerMass> Sodium), Charge<PerMass>> SumOfBases { get; } = new(
        "sum-of-bases",
        "Sum of the bases",
        "B = Ca + Mg + K + Na",
        Clemson,
        [
            new(Of("Ca", "calcium", PerMass.Unit), x => x.Calcium.Milliequivalents),
            new(Of("Mg", "magnesium", PerMass.Unit), x => x.Magnesium.Milliequivalents),
            new(Of("K", "potassium", PerMass.Unit), x => x.Potassium.Milliequivalents),
            new(Of("Na", "sodium", PerMass.Unit), x => x.Sodium.Milliequivalents),
        ],
        new(new Symbol("B", "sum of the bases", PerMass.Unit), y => y.Milliequivalents),
        v => (Mass(v[0]), Mass(v[1]), Mass(v[2]), Mass(v[3])),
        x => x.Calcium + x.Magnesium + x.Potassium + x.Sodium);

    /// <summary>Sum of the bases by volume of soil, as North Carolina counts it: without sodium.</summary>
    public static Formula<(Charge<PerVolume> Calcium, Charge<PerVolume> Magnesium, Charge<PerVolume> Potassium), Charge<PerVolume>> SumOfBasesByVolume { get; } = new(
        "sum-of-bases-by-volume",
        "Sum of the bases, by volume of soil",
        "B = Ca + Mg + K",
        new Citation("ncda-method", null, Evidence.Seen),
        [
            new(Of("Ca", "calcium", PerVolume.Unit), x => x.Calcium.Milliequivalents),
            new(Of("Mg", "magnesium", PerVolume.Unit), x => x.Magnesium.Milliequivalents),
            new(Of("K", "potassium", PerVolume.Unit), x => x.Potassium.Milliequivalents),
        ],
        new(new Symbol("B", "sum of the bases", PerVolume.Unit), y => y.Milliequivalents),
        v => (Volume(v[0]), Volume(v[1]), Volume(v[2])),
        x => x.Calcium + x.Magnesium + x.Potassium,
        NoVolumeExample);

    /// <summary>Exchange capacity by the sum, by mass of soil.</summary>
    public static Formula<(Charge<PerMass> Bases, Charge<PerMass> Acidity), Charge<PerMass>> Capacity { get; } =
        OfCapacity<PerMass>("exchange-capacity-sum", "Cation exchange capacity by the sum", Clemson, null);

    /// <summary>Exchange capacity by the sum, by volume of soil.</summary>
    public static Formula<(Charge<PerVolume> Bases, Charge<PerVolume> Acidity), Charge<PerVolume>> CapacityByVolume { get; } =
        OfCapacity<PerVolume>("exchange-capacity-sum-by-volume", "Cation exchange capacity by the sum, by volume of soil", new Citation("ncda-method", null, Evidence.Seen), NoVolumeExample);

    /// <summary>Part of the exchange capacity that one cation, or all bases together, fill.</summary>
    public static Formula<(Charge<PerMass> Part, Charge<PerMass> Capacity), Saturation> SaturationOf { get; } =
        OfSaturation<PerMass>("cation-saturation", "Saturation of the exchange capacity", Clemson, null);

    /// <summary>The same by volume of soil.</summary>
    public static Formula<(Charge<PerVolume> Part, Charge<PerVolume> Capacity), Saturation> SaturationByVolume { get; } =
        OfSaturation<PerVolume>("cation-saturation-by-volume", "Saturation of the exchange capacity, by volume of soil", new Citation("ncda-method", null, Evidence.Seen), NoVolumeExample);

    /// <summary>Calcium to magnesium, on charge.</summary>
    public static Formula<(Charge<PerMass> Calcium, Charge<PerMass> Magnesium), Coefficient> CalciumToMagnesium { get; } =
        OfRatio<PerMass>("calcium-to-magnesium", "Calcium to magnesium");

    /// <summary>Calcium to magnesium, on charge, by volume of soil.</summary>
    public static Formula<(Charge<PerVolume> Calcium, Charge<PerVolume> Magnesium), Coefficient> CalciumToMagnesiumByVolume { get; } =
        OfRatio<PerVolume>("calcium-to-magnesium-by-volume", "Calcium to magnesium, by volume of soil");

    /// <summary>
    /// Effective exchange capacity at the soil's own pH: bases and the acidity that 1 M potassium chloride takes out. In acid soil it is
    /// smaller than the sum with a buffer's acidity, which refers to the buffer's pH.
    /// </summary>
    public static Formula<(Charge<PerMass> Bases, Charge<PerMass> Exchangeable), Charge<PerMass>> EffectiveCapacity { get; } = new(
        "effective-exchange-capacity",
        "Effective cation exchange capacity at the soil's own pH",
        "ECEC = B + EA",
        Citation.CommonPractice,
        [
            new(Of("B", "sum of the bases", PerMass.Unit), x => x.Bases.Milliequivalents),
            new(Of("EA", "aluminium and hydrogen extracted by 1 M potassium chloride", PerMass.Unit), x => x.Exchangeable.Milliequivalents),
        ],
        new(new Symbol("ECEC", "effective cation exchange capacity", PerMass.Unit), y => y.Milliequivalents),
        v => (Mass(v[0]), Mass(v[1])),
        x => x.Bases + x.Exchangeable,
        "The definition of textbooks; no worked example was read.");

    private static Charge<PerMass> Mass(double value) => Charge<PerMass>.FromMilliequivalents(value);

    private static Charge<PerVolume> Volume(double value) => Charge<PerVolume>.FromMilliequivalents(value);

    private static Symbol Of(string name, string meaning, string unit) => new(name, meaning, unit, 0);

    private static Formula<(TContent Content, TContent Weight), Charge<TBasis>> OfCation<TContent, TBasis>(
        string id,
        string title,
        string unit,
        Func<TContent, double> read,
        Func<double, TContent> make,
        string? whyUnchecked)
        where TBasis : ISoilBasis => new(
        id,
        title,
        "q = c / w",
        Clemson,
        [
            new(Of("c", "extracted cation", unit), x => read(x.Content)),
            new(new Symbol("w", $"that cation in 1 {TBasis.Unit}", unit, 1), x => read(x.Weight)),
        ],
        new(new Symbol("q", "charge of the cation", TBasis.Unit), y => y.Milliequivalents),
        v => (make(v[0]), make(v[1])),
        x => Charge<TBasis>.FromMilliequivalents(read(x.Content) / read(x.Weight)),
        whyUnchecked);

    private static Formula<(Coefficient PerUnit, BufferPh<TBuffer> Start, BufferPh<TBuffer> Buffer), BufferAcidity<TBuffer>> OfBuffer<TBuffer, TBasis>(
        string id,
        string title,
        string reading,
        Citation source,
        string? whyUnchecked)
        where TBuffer : IBufferOn<TBasis>
        where TBasis : ISoilBasis => new(
        id,
        title,
        "H = k × max(S − BpH, 0)",
        source,
        [
            new(new Symbol("k", "acidity for one unit of buffer pH", $"{TBasis.Unit} per pH", 0), x => x.PerUnit.Value),
            new(new Symbol("S", "buffer pH at which acidity is zero", "pH", 0, 14), x => x.Start.Value),
            new(new Symbol("BpH", reading, "pH", 0, 14), x => x.Buffer.Value),
        ],
        new(new Symbol("H", "acidity", TBasis.Unit), y => y.Value),
        v => (new Coefficient(v[0]), new BufferPh<TBuffer>(v[1]), new BufferPh<TBuffer>(v[2])),
        x => new BufferAcidity<TBuffer>(x.PerUnit.Value * Math.Max(x.Start.Value - x.Buffer.Value, 0)),
        whyUnchecked);

    private static Formula<(Charge<TBasis> Bases, Charge<TBasis> Acidity), Charge<TBasis>> OfCapacity<TBasis>(string id, string title, Citation source, string? whyUnchecked)
        where TBasis : ISoilBasis => new(
        id,
        title,
        "CEC = B + H",
        source,
        [
            new(Of("B", "sum of the bases", TBasis.Unit), x => x.Bases.Milliequivalents),
            new(Of("H", "acidity", TBasis.Unit), x => x.Acidity.Milliequivalents),
        ],
        new(new Symbol("CEC", "cation exchange capacity", TBasis.Unit), y => y.Milliequivalents),
        v => (Charge<TBasis>.FromMilliequivalents(v[0]), Charge<TBasis>.FromMilliequivalents(v[1])),
        x => x.Bases + x.Acidity,
        whyUnchecked);

    private static Formula<(Charge<TBasis> Part, Charge<TBasis> Capacity), Saturation> OfSaturation<TBasis>(string id, string title, Citation source, string? whyUnchecked)
        where TBasis : ISoilBasis => new(
        id,
        title,
        "s = 100 × q / CEC",
        source,
        [
            new(Of("q", "charge of one cation or of all bases", TBasis.Unit), x => x.Part.Milliequivalents),
            new(Of("CEC", "cation exchange capacity", TBasis.Unit), x => x.Capacity.Milliequivalents),
        ],
        new(new Symbol("s", "saturation", "%"), y => y.Percent),
        v => (Charge<TBasis>.FromMilliequivalents(v[0]), Charge<TBasis>.FromMilliequivalents(v[1])),
        x => Saturation.FromPercent(100 * x.Part.Milliequivalents / x.Capacity.Milliequivalents),
        whyUnchecked);

    private static Formula<(Charge<TBasis> Calcium, Charge<TBasis> Magnesium), Coefficient> OfRatio<TBasis>(string id, string title)
        where TBasis : ISoilBasis => new(
        id,
        title,
        "R = Ca / Mg",
        Citation.OurArithmetic,
        [
            new(Of("Ca", "calcium", TBasis.Unit), x => x.Calcium.Milliequivalents),
            new(Of("Mg", "magnesium", TBasis.Unit), x => x.Magnesium.Milliequivalents),
        ],
        new(new Symbol("R", "calcium to magnesium on charge", ""), y => y.Value),
        v => (Charge<TBasis>.FromMilliequivalents(v[0]), Charge<TBasis>.FromMilliequivalents(v[1])),
        x => new Coefficient(x.Calcium.Milliequivalents / x.Magnesium.Milliequivalents),
        "A quotient; no publication that was read prints one beside the two charges it comes from.");
}
