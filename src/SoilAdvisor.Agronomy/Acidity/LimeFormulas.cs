using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// Published equations from a named buffer to a lime requirement. Each takes its own buffer's type only; the coefficients come from the
/// method's table. Tons are short tons of 2000 lb.
/// </summary>
public static class LimeFormulas
{
    private const double PoundsInShortTon = 2000;

    private const string RecalledEquation = "The equation is recalled; no publication with it was read.";

    private static readonly Citation NorthCarolina = new("ncda-bufftab", "Lime factor table and formula", Evidence.Seen);

    private static readonly Citation Pennsylvania = new("psu-agguide", "Part 1 Section 2, limestone recommendation", Evidence.Seen);

    private static readonly Citation AdamsEvansRecalled = new("mem-adams-evans", null, Evidence.FromMemory);

    /// <summary>Acidity by the Mehlich buffer, per volume of soil. A buffer at or above its start shows none.</summary>
    public static Formula<(Coefficient PerUnit, BufferPh<MehlichBuffer> Start, BufferPh<MehlichBuffer> Buffer), BufferAcidity<MehlichBuffer>> AcidityMehlich { get; } = new(
        "acidity-mehlich",
        "Acidity by the Mehlich buffer",
        "Ac = k × max(S − BpH, 0)",
        NorthCarolina,
        [
            new(new Symbol("k", "acidity for one unit of buffer pH", "meq/100 cm3 per pH", 0), x => x.PerUnit.Value),
            new(new Symbol("S", "buffer pH at which acidity is zero", "pH", 0, 14), x => x.Start.Value),
            new(new Symbol("BpH", "Mehlich buffer pH", "pH", 0, 14), x => x.Buffer.Value),
        ],
        new(new Symbol("Ac", "acidity", "meq/100 cm3"), y => y.Value),
        v => (new Coefficient(v[0]), new BufferPh<MehlichBuffer>(v[1]), new BufferPh<MehlichBuffer>(v[2])),
        x => new BufferAcidity<MehlichBuffer>(x.PerUnit.Value * Math.Max(x.Start.Value - x.Buffer.Value, 0)),
        "The worked example on the page starts from the acidity itself; none that starts from a buffer pH was read.");

    /// <summary>Lime requirement by the Mehlich buffer, North Carolina. Nothing at or above the target, nor at or above the reference pH.</summary>
    public static Formula<(BufferAcidity<MehlichBuffer> Acidity, SoilPh Target, SoilPh Ph, SoilPh Reference, MassPerArea Residual), MassPerArea> MehlichNorthCarolina { get; } = new(
        "lime-mehlich-north-carolina",
        "Lime requirement, Mehlich buffer, North Carolina",
        "LR = max(Ac × (T − pH) / (S − pH) − RC, 0) where S > pH; otherwise 0",
        NorthCarolina,
        [
            new(new Symbol("Ac", "acidity by the Mehlich buffer", "meq/100 cm3", 0), x => x.Acidity.Value),
            new(new Symbol("T", "target pH", "pH", 0, 6.6), x => x.Target.Value),
            new(new Symbol("pH", "soil pH in water", "pH", 0, 14), x => x.Ph.Value),
            new(new Symbol("S", "pH that the acidity refers to", "pH", 0, 14), x => x.Reference.Value),
            new(new Symbol("RC", "what is left of lime of the past year", "ton/acre", 0), x => x.Residual.PoundsPerAcre / PoundsInShortTon),
        ],
        new(new Symbol("LR", "lime requirement", "ton/acre"), y => y.PoundsPerAcre / PoundsInShortTon),
        v => (new BufferAcidity<MehlichBuffer>(v[0]), new SoilPh(v[1]), new SoilPh(v[2]), new SoilPh(v[3]), MassPerArea.FromPoundsPerAcre(v[4] * PoundsInShortTon)),
        x => x.Ph.Value >= x.Target.Value || x.Ph.Value >= x.Reference.Value
            ? default
            : NotBelowZero(MassPerArea.FromPoundsPerAcre(x.Acidity.Value * (x.Target.Value - x.Ph.Value) / (x.Reference.Value - x.Ph.Value) * PoundsInShortTon) - x.Residual));

    /// <summary>Lime requirement by exchangeable acidity, Pennsylvania, target pH 7.0: proportional to the acidity.</summary>
    public static Formula<(Coefficient PerAcidity, ExchangeableAcidity Acidity), MassPerArea> ModifiedMehlichPennsylvaniaTo70 { get; } = new(
        "lime-modified-mehlich-pennsylvania-to-7-0",
        "Lime requirement, modified Mehlich buffer, Pennsylvania, target 7.0",
        "LR = k × EA",
        Pennsylvania,
        [
            new(new Symbol("k", "lime for one meq/100 g", "lb/acre per meq/100g", 0), x => x.PerAcidity.Value),
            new(new Symbol("EA", "exchangeable acidity", "meq/100g", 0), x => x.Acidity.MilliequivalentsPer100Grams),
        ],
        new(new Symbol("LR", "lime requirement", "lb/acre CaCO3 equivalent"), y => y.PoundsPerAcre),
        v => (new Coefficient(v[0]), ExchangeableAcidity.FromMilliequivalentsPer100Grams(v[1])),
        x => MassPerArea.FromPoundsPerAcre(x.PerAcidity.Value * x.Acidity.MilliequivalentsPer100Grams),
        "The page prints the rule without a worked example.");

    /// <summary>Lime requirement by exchangeable acidity, Pennsylvania, target pH 6.5: proportional above the limit, one fixed rate at or below it.</summary>
    public static Formula<(Coefficient PerAcidity, ExchangeableAcidity Limit, MassPerArea Fixed, ExchangeableAcidity Acidity), MassPerArea> ModifiedMehlichPennsylvania { get; } = new(
        "lime-modified-mehlich-pennsylvania",
        "Lime requirement, modified Mehlich buffer, Pennsylvania, target 6.5",
        "LR = k × EA where EA > L; otherwise F",
        Pennsylvania,
        [
            new(new Symbol("k", "lime for one meq/100 g", "lb/acre per meq/100g", 0), x => x.PerAcidity.Value),
            new(new Symbol("L", "acidity above which the rate per acidity applies", "meq/100g", 0), x => x.Limit.MilliequivalentsPer100Grams),
            new(new Symbol("F", "fixed rate at or below that acidity", "lb/acre", 0), x => x.Fixed.PoundsPerAcre),
            new(new Symbol("EA", "exchangeable acidity", "meq/100g", 0), x => x.Acidity.MilliequivalentsPer100Grams),
        ],
        new(new Symbol("LR", "lime requirement", "lb/acre CaCO3 equivalent"), y => y.PoundsPerAcre),
        v => (new Coefficient(v[0]), ExchangeableAcidity.FromMilliequivalentsPer100Grams(v[1]), MassPerArea.FromPoundsPerAcre(v[2]), ExchangeableAcidity.FromMilliequivalentsPer100Grams(v[3])),
        x => x.Acidity.MilliequivalentsPer100Grams > x.Limit.MilliequivalentsPer100Grams
            ? MassPerArea.FromPoundsPerAcre(x.PerAcidity.Value * x.Acidity.MilliequivalentsPer100Grams)
            : x.Fixed,
        "The page prints the rule without a worked example.");

    /// <summary>Acidity by the Adams-Evans buffer. A buffer at or above its start shows none.</summary>
    public static Formula<(Coefficient PerUnit, BufferPh<AdamsEvansBuffer> Start, BufferPh<AdamsEvansBuffer> Buffer), BufferAcidity<AdamsEvansBuffer>> AcidityAdamsEvans { get; } = new(
        "acidity-adams-evans",
        "Acidity by the Adams-Evans buffer",
        "H = k × max(S − BpH, 0)",
        new Citation("clemson-cec", null, Evidence.Seen),
        [
            new(new Symbol("k", "acidity for one unit of buffer pH", "meq/100g per pH", 0), x => x.PerUnit.Value),
            new(new Symbol("S", "buffer pH at which acidity is zero", "pH", 0, 14), x => x.Start.Value),
            new(new Symbol("BpH", "Adams-Evans buffer pH", "pH", 0, 14), x => x.Buffer.Value),
        ],
        new(new Symbol("H", "acidity", "meq/100g"), y => y.Value),
        v => (new Coefficient(v[0]), new BufferPh<AdamsEvansBuffer>(v[1]), new BufferPh<AdamsEvansBuffer>(v[2])),
        x => new BufferAcidity<AdamsEvansBuffer>(x.PerUnit.Value * Math.Max(x.Start.Value - x.Buffer.Value, 0)));

    /// <summary>
    /// Part of the exchange capacity that acidity fills at a pH: the smaller root of pH = a − b h + c h². Between the curve's lowest point and a.
    /// </summary>
    public static Formula<(Coefficient Constant, Coefficient Linear, Coefficient Square, SoilPh Ph), Coefficient> AcidSaturationAdamsEvans { get; } = new(
        "acid-saturation-adams-evans",
        "Acid saturation at a pH, Adams-Evans",
        "h = (b − √(b² − 4 × c × (a − pH))) / (2 × c)",
        AdamsEvansRecalled,
        [
            new(new Symbol("a", "constant of the curve", "pH", 0), x => x.Constant.Value),
            new(new Symbol("b", "linear coefficient, subtracted", "pH per fraction", 0), x => x.Linear.Value),
            new(new Symbol("c", "square coefficient, added", "pH per fraction squared", 0.0001), x => x.Square.Value),
            new(new Symbol("pH", "soil pH in water", "pH", 4.5, 7.79), x => x.Ph.Value),
        ],
        new(new Symbol("h", "acid saturation", "fraction"), y => y.Value),
        v => (new Coefficient(v[0]), new Coefficient(v[1]), new Coefficient(v[2]), new SoilPh(v[3])),
        x => new Coefficient((x.Linear.Value - Math.Sqrt((x.Linear.Value * x.Linear.Value) - (4 * x.Square.Value * (x.Constant.Value - x.Ph.Value)))) / (2 * x.Square.Value)),
        RecalledEquation);

    /// <summary>Lime requirement by the Adams-Evans buffer.</summary>
    public static Formula<(Coefficient PerAcidity, BufferAcidity<AdamsEvansBuffer> Acidity, Coefficient SaturationNow, Coefficient SaturationAtTarget, Coefficient Efficiency), MassPerArea> AdamsEvans { get; } =
        LimeBySaturation<AdamsEvansBuffer>("lime-adams-evans", "Adams-Evans");

    /// <summary>Lime requirement by the Moore-Sikora buffer, by the same equation.</summary>
    public static Formula<(Coefficient PerAcidity, BufferAcidity<MooreSikoraBuffer> Acidity, Coefficient SaturationNow, Coefficient SaturationAtTarget, Coefficient Efficiency), MassPerArea> MooreSikora { get; } =
        LimeBySaturation<MooreSikoraBuffer>("lime-moore-sikora", "Moore-Sikora");

    /// <summary>Lime of the past year that has not reacted yet: it goes at an even pace, and none is left when all is gone.</summary>
    public static Formula<(MassPerArea Spread, Coefficient Loss, Coefficient Months), MassPerArea> ResidualLime { get; } = new(
        "lime-residual",
        "Lime of the past year not reacted yet, North Carolina",
        "RC = A × max(1 − r × m / 100, 0)",
        new Citation("ncda-bufftab", "monthly loss; the even pace is our reading", Evidence.Ours),
        [
            new(new Symbol("A", "lime spread", "lb/acre", 0), x => x.Spread.PoundsPerAcre),
            new(new Symbol("r", "loss by the month", "%", 0, 100), x => x.Loss.Value),
            new(new Symbol("m", "months since", "months", 0, 12), x => x.Months.Value),
        ],
        new(new Symbol("RC", "lime not reacted yet", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), new Coefficient(v[1]), new Coefficient(v[2])),
        x => x.Spread * Math.Max(1 - (x.Loss.Value * x.Months.Value / 100), 0),
        "The page prints the monthly loss without a worked example.");

    /// <summary>Lime requirement by the Mehlich buffer as the northeastern manual is recalled: mineral soils, target about 6.5 to 7.0.</summary>
    public static Formula<(Coefficient Square, Coefficient Linear, BufferAcidity<MehlichBuffer> Acidity, Coefficient PerAcidity), MassPerArea> MehlichNortheast { get; } = new(
        "lime-mehlich-northeast",
        "Lime requirement, Mehlich buffer, northeastern manual",
        "LR = (s × Ac² + l × Ac) × k",
        new Citation("mem-ne493", null, Evidence.FromMemory),
        [
            new(new Symbol("s", "for the square of the acidity", "per meq/100 cm3", 0), x => x.Square.Value),
            new(new Symbol("l", "for the acidity", "", 0), x => x.Linear.Value),
            new(new Symbol("Ac", "acidity by the Mehlich buffer", "meq/100 cm3", 0), x => x.Acidity.Value),
            new(new Symbol("k", "pure lime for one meq/100 cm3 in the depth of the method", "lb/acre per meq/100 cm3", 0), x => x.PerAcidity.Value),
        ],
        new(new Symbol("LR", "lime requirement", "lb/acre"), y => y.PoundsPerAcre),
        v => (new Coefficient(v[0]), new Coefficient(v[1]), new BufferAcidity<MehlichBuffer>(v[2]), new Coefficient(v[3])),
        x => MassPerArea.FromPoundsPerAcre(((x.Square.Value * x.Acidity.Value * x.Acidity.Value) + (x.Linear.Value * x.Acidity.Value)) * x.PerAcidity.Value),
        RecalledEquation);

    /// <summary>
    /// Lime requirement by the equation that a publication prints for one target pH; nothing where it comes out below zero. The coefficients
    /// are in the printed unit.
    /// </summary>
    public static Formula<(Coefficient Constant, Coefficient PerBuffer, Coefficient PerSquare, Coefficient PerPh, Coefficient Buffer, SoilPh Ph, MassPerArea Unit), MassPerArea> ByTargetEquation { get; } = new(
        "lime-by-target-equation",
        "Lime requirement by the equation of one target pH",
        "LR = max(a + b × B + c × B² + d × pH, 0) × u",
        Citation.OurArithmetic,
        [
            new(new Symbol("a", "constant", "printed unit"), x => x.Constant.Value),
            new(new Symbol("b", "for one unit of buffer pH", "printed unit per pH"), x => x.PerBuffer.Value),
            new(new Symbol("c", "for one squared unit of buffer pH", "printed unit per pH squared"), x => x.PerSquare.Value),
            new(new Symbol("d", "for one unit of soil pH", "printed unit per pH"), x => x.PerPh.Value),
            new(new Symbol("B", "buffer pH; 0 where none is read", "pH", 0, 14), x => x.Buffer.Value),
            new(new Symbol("pH", "soil pH in water", "pH", 0, 14), x => x.Ph.Value),
            new(new Symbol("u", "one printed unit", "lb/acre", 0), x => x.Unit.PoundsPerAcre),
        ],
        new(new Symbol("LR", "lime requirement", "lb/acre"), y => y.PoundsPerAcre),
        v => (new Coefficient(v[0]), new Coefficient(v[1]), new Coefficient(v[2]), new Coefficient(v[3]), new Coefficient(v[4]), new SoilPh(v[5]), MassPerArea.FromPoundsPerAcre(v[6])),
        x => x.Unit * Math.Max(x.Constant.Value + (x.PerBuffer.Value * x.Buffer.Value) + (x.PerSquare.Value * x.Buffer.Value * x.Buffer.Value) + (x.PerPh.Value * x.Ph.Value), 0),
        "It is the common form of equations whose coefficients stand in the tables; those held are recalled.");

    /// <summary>Lime buffer capacity at equilibrium from the reading after 30 minutes, Georgia.</summary>
    public static Formula<(Coefficient ThirtyMinutes, Coefficient Linear, Coefficient Square), LimeBufferCapacity> EquilibriumCapacity { get; } = new(
        "lime-buffer-capacity-equilibrium",
        "Lime buffer capacity at equilibrium",
        "LBCeq = LBC30 × (l + s × LBC30)",
        new Citation("thompson2010", null, Evidence.Seen),
        [
            new(new Symbol("LBC30", "lime buffer capacity after 30 minutes", "mg CaCO3/kg per pH", 0), x => x.ThirtyMinutes.Value),
            new(new Symbol("l", "linear coefficient", "", 0), x => x.Linear.Value),
            new(new Symbol("s", "square coefficient", "per mg CaCO3/kg per pH", 0), x => x.Square.Value),
        ],
        new(new Symbol("LBCeq", "lime buffer capacity at equilibrium", "mg CaCO3/kg per pH"), y => y.MilligramsPerKilogramAndPh),
        v => (new Coefficient(v[0]), new Coefficient(v[1]), new Coefficient(v[2])),
        x => new LimeBufferCapacity(x.ThirtyMinutes.Value * (x.Linear.Value + (x.Square.Value * x.ThirtyMinutes.Value))),
        "The abstract prints the relation without a worked example.");

    /// <summary>Lime requirement by lime buffer capacity, Georgia: pure calcium carbonate for the rise in pH. Nothing at or above the target.</summary>
    public static Formula<(LimeBufferCapacity Capacity, SoilPh Target, SoilPh Ph, Coefficient PerCapacity), MassPerArea> SingleAddition { get; } = new(
        "lime-single-addition",
        "Lime requirement by lime buffer capacity, Georgia",
        "LR = LBCeq × max(T − pH, 0) × k",
        new Citation("uga-c874", null, Evidence.Ours),
        [
            new(new Symbol("LBCeq", "lime buffer capacity at equilibrium", "mg CaCO3/kg per pH", 0), x => x.Capacity.MilligramsPerKilogramAndPh),
            new(new Symbol("T", "target pH", "pH", 0, 6.5), x => x.Target.Value),
            new(new Symbol("pH", "soil pH in water", "pH", 0, 14), x => x.Ph.Value),
            new(new Symbol("k", "lime for one mg/kg in 2,000,000 lb of soil", "lb/acre per mg/kg", 0), x => x.PerCapacity.Value),
        ],
        new(new Symbol("LR", "lime requirement", "lb/acre CaCO3"), y => y.PoundsPerAcre),
        v => (new LimeBufferCapacity(v[0]), new SoilPh(v[1]), new SoilPh(v[2]), new Coefficient(v[3])),
        x => MassPerArea.FromPoundsPerAcre(x.Capacity.MilligramsPerKilogramAndPh * Math.Max(x.Target.Value - x.Ph.Value, 0) * x.PerCapacity.Value),
        "The circular defines the capacity; the arithmetic is ours and no worked example was read.");

    /// <summary>A requirement printed for one depth, for the depth that is really worked.</summary>
    public static Formula<(MassPerArea Rate, Length Printed, Length Worked), MassPerArea> ForDepth { get; } = new(
        "lime-for-depth",
        "Lime requirement for the depth worked",
        "L = LR × D / P",
        Citation.OurArithmetic,
        [
            new(new Symbol("LR", "lime requirement for the printed depth", "lb/acre", 0), x => x.Rate.PoundsPerAcre),
            new(new Symbol("P", "depth the requirement is printed for", "in", 0.1), x => x.Printed.Inches),
            new(new Symbol("D", "depth worked", "in", 0.1), x => x.Worked.Inches),
        ],
        new(new Symbol("L", "lime requirement for the depth worked", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), Length.FromInches(v[1]), Length.FromInches(v[2])),
        x => x.Rate * (x.Worked / x.Printed),
        "Proportion; publications state it in words and print no worked example that was read.");

    /// <summary>Stone that carries a requirement counted as pure calcium carbonate.</summary>
    public static Formula<(Rate<CalciumCarbonate> Requirement, MassShare NeutralisingValue), MassPerArea> AsStone { get; } = new(
        "lime-as-stone",
        "Stone for a lime requirement",
        "S = LR × 100 / NV",
        new Citation("psu-garden", null, Evidence.Seen),
        [
            new(new Symbol("LR", "lime requirement as calcium carbonate equivalent", "lb/acre", 0), x => x.Requirement.PoundsPerAcre),
            new(new Symbol("NV", "neutralising value of the stone", "% CaCO3 equivalent", 1, 200), x => x.NeutralisingValue.Percent),
        ],
        new(new Symbol("S", "stone", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<CalciumCarbonate>.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1])),
        x => x.Requirement.Amount * (1 / x.NeutralisingValue.Fraction));

    /// <summary>A requirement between two printed rows of a lime table, where the publication allows it.</summary>
    public static Formula<(MassPerArea Lower, MassPerArea Upper, Coefficient LowerBuffer, Coefficient UpperBuffer, Coefficient Buffer), MassPerArea> BetweenCells { get; } = new(
        "lime-between-cells",
        "Lime requirement between two rows of a table",
        "LR = R1 + (R2 − R1) × (B − B1) / (B2 − B1)",
        Citation.OurArithmetic,
        [
            new(new Symbol("R1", "rate at the lower buffer pH", "lb/acre", 0), x => x.Lower.PoundsPerAcre),
            new(new Symbol("R2", "rate at the higher buffer pH", "lb/acre", 0), x => x.Upper.PoundsPerAcre),
            new(new Symbol("B1", "lower buffer pH", "pH", 0, 14), x => x.LowerBuffer.Value),
            new(new Symbol("B2", "higher buffer pH", "pH", 0, 14), x => x.UpperBuffer.Value),
            new(new Symbol("B", "buffer pH", "pH", 0, 14), x => x.Buffer.Value),
        ],
        new(new Symbol("LR", "lime requirement", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassPerArea.FromPoundsPerAcre(v[1]), new Coefficient(v[2]), new Coefficient(v[3]), new Coefficient(v[4])),
        x => x.Lower + ((x.Upper - x.Lower) * ((x.Buffer.Value - x.LowerBuffer.Value) / (x.UpperBuffer.Value - x.LowerBuffer.Value))),
        "No table held here allows values between its rows.");

    private static Formula<(Coefficient PerAcidity, BufferAcidity<TBuffer> Acidity, Coefficient SaturationNow, Coefficient SaturationAtTarget, Coefficient Efficiency), MassPerArea> LimeBySaturation<TBuffer>(string id, string buffer)
        where TBuffer : IBuffer => new(
            id,
            $"Lime requirement, {buffer} buffer",
            "LR = k × H / h1 × max(h1 − h2, 0) × e",
            AdamsEvansRecalled,
            [
                new(new Symbol("k", "pure lime for one meq/100 g", "lb/acre per meq/100g", 0), x => x.PerAcidity.Value),
                new(new Symbol("H", $"acidity by the {buffer} buffer", "meq/100g", 0), x => x.Acidity.Value),
                new(new Symbol("h1", "acid saturation at the soil pH", "fraction", 0.001, 1), x => x.SaturationNow.Value),
                new(new Symbol("h2", "acid saturation at the target pH", "fraction", 0, 1), x => x.SaturationAtTarget.Value),
                new(new Symbol("e", "factor for ground limestone", "", 0), x => x.Efficiency.Value),
            ],
            new(new Symbol("LR", "lime requirement", "lb/acre"), y => y.PoundsPerAcre),
            v => (new Coefficient(v[0]), new BufferAcidity<TBuffer>(v[1]), new Coefficient(v[2]), new Coefficient(v[3]), new Coefficient(v[4])),
            x => MassPerArea.FromPoundsPerAcre(x.PerAcidity.Value * x.Acidity.Value / x.SaturationNow.Value * Math.Max(x.SaturationNow.Value - x.SaturationAtTarget.Value, 0) * x.Efficiency.Value),
            RecalledEquation);

    private static MassPerArea NotBelowZero(MassPerArea rate) => rate < default(MassPerArea) ? default : rate;
}
