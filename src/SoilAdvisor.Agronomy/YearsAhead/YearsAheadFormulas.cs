using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>From what is spread and what is harvested to the soil test of a later year.</summary>
public static class YearsAheadFormulas
{
    private const string NoExample = "No publication that was read works an example of it; checked against a simulation and the laws of the sum.";
    private const string RestatedOnly = "The form was read; no worked example of it was.";

    private static readonly Citation Column2012 = new("osu-move-soil-test-2012", null, Evidence.Seen);
    private static readonly Citation RestatedTriState = new("symclub-tri-state", null, Evidence.Seen);
    private static readonly Citation FiftySixFields = new("drawdown-56-fields-2025", "abstract", Evidence.Seen);
    private static readonly Citation PhosphorusModel = new("tyson-2020", "abstract", Evidence.Seen);

    /// <summary>Phosphate left over in a year: B = A − R. Partial: leaching, erosion, seed and irrigation are left out.</summary>
    public static Formula<(Rate<TotalP2O5> Applied, Rate<TotalP2O5> Removed), Rate<TotalP2O5>> PhosphateBalance { get; } = new(
        "phosphate-balance",
        "Phosphate spread less phosphate harvested",
        "B = A − R",
        Citation.OurArithmetic,
        [
            new(new Symbol("A", "total phosphate (P2O5) spread in a year", "lb/acre", 0), x => x.Applied.PoundsPerAcre),
            new(new Symbol("R", "phosphate (P2O5) that the harvests of the year take away", "lb/acre", 0), x => x.Removed.PoundsPerAcre),
        ],
        new(new Symbol("B", "phosphate left over; below zero: taken from the soil", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<TotalP2O5>.FromPoundsPerAcre(v[0]), Rate<TotalP2O5>.FromPoundsPerAcre(v[1])),
        x => x.Applied - x.Removed);

    /// <summary>Potash left over in a year: B = A − R. Partial: leaching, erosion, seed and irrigation are left out.</summary>
    public static Formula<(Rate<K2O> Applied, Rate<K2O> Removed), Rate<K2O>> PotashBalance { get; } = new(
        "potash-balance",
        "Potash spread less potash harvested",
        "B = A − R",
        Citation.OurArithmetic,
        [
            new(new Symbol("A", "potash (K2O) spread in a year", "lb/acre", 0), x => x.Applied.PoundsPerAcre),
            new(new Symbol("R", "potash (K2O) that the harvests of the year take away", "lb/acre", 0), x => x.Removed.PoundsPerAcre),
        ],
        new(new Symbol("B", "potash left over; below zero: taken from the soil", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<K2O>.FromPoundsPerAcre(v[0]), Rate<K2O>.FromPoundsPerAcre(v[1])),
        x => x.Applied - x.Removed,
        "Plain subtraction; no publication that was read works it for potash.");

    /// <summary>Change of a phosphorus test by phosphate left over or taken: D = B / c.</summary>
    public static Formula<(Rate<TotalP2O5> Balance, Coefficient PoundsPerUnit), Coefficient> ChangeOfPhosphorusTest { get; } = new(
        "phosphorus-test-change",
        "Change of the phosphorus test",
        "D = B / c",
        Column2012,
        [
            new(new Symbol("B", "phosphate (P2O5) left over; below zero: taken away", "lb/acre"), x => x.Balance.PoundsPerAcre),
            new(new Symbol("c", "phosphate (P2O5) that moves the test by 1 mg/kg, of one extractant", "lb/acre per mg/kg", 0.1, 500), x => x.PoundsPerUnit.Value),
        ],
        new(new Symbol("D", "change of the test", "mg/kg"), y => y.Value),
        v => (Rate<TotalP2O5>.FromPoundsPerAcre(v[0]), new Coefficient(v[1])),
        x => new Coefficient(x.Balance.PoundsPerAcre / x.PoundsPerUnit.Value));

    /// <summary>Change of a potassium test by potash left over or taken: D = B / c.</summary>
    public static Formula<(Rate<K2O> Balance, Coefficient PoundsPerUnit), Coefficient> ChangeOfPotassiumTest { get; } = new(
        "potassium-test-change",
        "Change of the potassium test",
        "D = B / c",
        Column2012,
        [
            new(new Symbol("B", "potash (K2O) left over; below zero: taken away", "lb/acre"), x => x.Balance.PoundsPerAcre),
            new(new Symbol("c", "potash (K2O) that moves the test by 1 mg/kg, of one extractant", "lb/acre per mg/kg", 0.1, 500), x => x.PoundsPerUnit.Value),
        ],
        new(new Symbol("D", "change of the test", "mg/kg"), y => y.Value),
        v => (Rate<K2O>.FromPoundsPerAcre(v[0]), new Coefficient(v[1])),
        x => new Coefficient(x.Balance.PoundsPerAcre / x.PoundsPerUnit.Value),
        RestatedOnly);

    /// <summary>Potash that moves a potassium test by 1 mg/kg, by exchange capacity: c = a + b × CEC.</summary>
    public static Formula<(Coefficient AtZero, Coefficient PerCec, ExchangeCapacity Cec), Coefficient> PotashForOneUnit { get; } = new(
        "potash-for-one-mg-per-kg",
        "Potash that moves the potassium test by 1 mg/kg",
        "c = a + b × CEC",
        RestatedTriState,
        [
            new(new Symbol("a", "potash (K2O) for 1 mg/kg at a CEC of zero", "lb/acre per mg/kg", 0), x => x.AtZero.Value),
            new(new Symbol("b", "its rise per unit of CEC", "lb/acre per mg/kg per meq/100g", 0), x => x.PerCec.Value),
            new(new Symbol("CEC", "cation exchange capacity", "meq/100g", 0, 100), x => x.Cec.MilliequivalentsPer100Grams),
        ],
        new(new Symbol("c", "potash (K2O) for 1 mg/kg", "lb/acre per mg/kg"), y => y.Value),
        v => (new Coefficient(v[0]), new Coefficient(v[1]), ExchangeCapacity.FromMilliequivalentsPer100Grams(v[2])),
        x => new Coefficient(x.AtZero.Value + (x.PerCec.Value * x.Cec.MilliequivalentsPer100Grams)));

    /// <summary>Phosphate, beyond what the harvests take, that lifts a test to a level: N = max(L − T, 0) × c.</summary>
    public static Formula<(SoilConcentration Level, SoilConcentration Test, Coefficient PoundsPerUnit), Rate<TotalP2O5>> PhosphateToRaise { get; } = new(
        "phosphate-to-raise-a-test",
        "Phosphate that lifts the phosphorus test to a level, beyond what the harvests take",
        "N = max(L − T, 0) × c",
        Column2012,
        [
            new(new Symbol("L", "level wanted", "mg/kg", 0), x => x.Level.MilligramsPerKilogram),
            new(new Symbol("T", "soil test", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
            new(new Symbol("c", "phosphate (P2O5) that moves the test by 1 mg/kg, of one extractant", "lb/acre per mg/kg", 0.1, 500), x => x.PoundsPerUnit.Value),
        ],
        new(new Symbol("N", "phosphate (P2O5) in all", "lb/acre"), y => y.PoundsPerAcre),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1]), new Coefficient(v[2])),
        x => Rate<TotalP2O5>.FromPoundsPerAcre(Math.Max(x.Level.MilligramsPerKilogram - x.Test.MilligramsPerKilogram, 0) * x.PoundsPerUnit.Value),
        RestatedOnly);

    /// <summary>Potash, beyond what the harvests take, that lifts a test to a level: N = max(L − T, 0) × c.</summary>
    public static Formula<(SoilConcentration Level, SoilConcentration Test, Coefficient PoundsPerUnit), Rate<K2O>> PotashToRaise { get; } = new(
        "potash-to-raise-a-test",
        "Potash that lifts the potassium test to a level, beyond what the harvests take",
        "N = max(L − T, 0) × c",
        RestatedTriState,
        [
            new(new Symbol("L", "level wanted", "mg/kg", 0), x => x.Level.MilligramsPerKilogram),
            new(new Symbol("T", "soil test", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
            new(new Symbol("c", "potash (K2O) that moves the test by 1 mg/kg, of one extractant", "lb/acre per mg/kg", 0.1, 500), x => x.PoundsPerUnit.Value),
        ],
        new(new Symbol("N", "potash (K2O) in all", "lb/acre"), y => y.PoundsPerAcre),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1]), new Coefficient(v[2])),
        x => Rate<K2O>.FromPoundsPerAcre(Math.Max(x.Level.MilligramsPerKilogram - x.Test.MilligramsPerKilogram, 0) * x.PoundsPerUnit.Value),
        RestatedOnly);

    /// <summary>By what a result is divided and multiplied to find where its true value lies four times in five.</summary>
    public static Formula<(Coefficient Score, CoefficientOfVariation Spread), Coefficient> LikelyFactor { get; } = new(
        "likely-factor",
        "Factor from a result to the ends of its likely range",
        "r = exp(z × √(ln(1 + (CV / 100)²)))",
        Citation.OurArithmetic,
        [
            new(new Symbol("z", "standard score of the share that lies within", "", 0, 10), x => x.Score.Value),
            new(new Symbol("CV", "spread of the result", "%", 0, CoefficientOfVariation.LargestPercent), x => x.Spread.Percent),
        ],
        new(new Symbol("r", "factor", ""), y => y.Value),
        v => (new Coefficient(v[0]), CoefficientOfVariation.FromPercent(v[1])),
        x => new Coefficient(Math.Exp(x.Score.Value * x.Spread.OfLogarithm)),
        NoExample);

    /// <summary>Soil test after some years of one balance: T = max(T0 + E + y × D, 0).</summary>
    public static Formula<(SoilConcentration Test, Coefficient Once, Coefficient Years, Coefficient Pace), SoilConcentration> ProjectedTest { get; } = new(
        "projected-test",
        "Soil test after some years",
        "T = max(T0 + E + y × D, 0)",
        Citation.OurArithmetic,
        [
            new(new Symbol("T0", "soil test now", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
            new(new Symbol("E", "change by what was spread once", "mg/kg"), x => x.Once.Value),
            new(new Symbol("y", "years", "year", 0, 100), x => x.Years.Value),
            new(new Symbol("D", "change in a year", "mg/kg"), x => x.Pace.Value),
        ],
        new(new Symbol("T", "soil test then", "mg/kg"), y => y.MilligramsPerKilogram),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), new Coefficient(v[1]), new Coefficient(v[2]), new Coefficient(v[3])),
        x => SoilConcentration.FromMilligramsPerKilogram(Math.Max(x.Test.MilligramsPerKilogram + x.Once.Value + (x.Years.Value * x.Pace.Value), 0)),
        NoExample);

    /// <summary>
    /// Low end of the band: the low end of the test and the low end of the change lie apart from the projection by two independent
    /// distances, which add as squares.
    /// </summary>
    public static Formula<(SoilConcentration Projected, SoilConcentration Test, Coefficient Factor, Coefficient Change, Coefficient ChangeAtItsEnd), SoilConcentration> LowEnd { get; } = new(
        "projected-test-low-end",
        "Low end of a projected soil test",
        "L = max(T − √((T0 − T0 / r)² + (C − CL)²), 0)",
        Citation.OurJudgement,
        [
            new(new Symbol("T", "projected soil test", "mg/kg", 0), x => x.Projected.MilligramsPerKilogram),
            new(new Symbol("T0", "soil test now", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
            new(new Symbol("r", "factor to the ends of its likely range", "", 1), x => x.Factor.Value),
            new(new Symbol("C", "change until then", "mg/kg"), x => x.Change.Value),
            new(new Symbol("CL", "low end of that change", "mg/kg"), x => x.ChangeAtItsEnd.Value),
        ],
        new(new Symbol("L", "low end: the test reads less one time in ten", "mg/kg"), y => y.MilligramsPerKilogram),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1]), new Coefficient(v[2]), new Coefficient(v[3]), new Coefficient(v[4])),
        x => SoilConcentration.FromMilligramsPerKilogram(Math.Max(
            x.Projected.MilligramsPerKilogram - Together(x.Test.MilligramsPerKilogram - (x.Test.MilligramsPerKilogram / x.Factor.Value), x.Change.Value - x.ChangeAtItsEnd.Value), 0)),
        NoExample);

    /// <summary>High end of the band; see <see cref="LowEnd"/>.</summary>
    public static Formula<(SoilConcentration Projected, SoilConcentration Test, Coefficient Factor, Coefficient Change, Coefficient ChangeAtItsEnd), SoilConcentration> HighEnd { get; } = new(
        "projected-test-high-end",
        "High end of a projected soil test",
        "H = T + √((T0 × r − T0)² + (CH − C)²)",
        Citation.OurJudgement,
        [
            new(new Symbol("T", "projected soil test", "mg/kg", 0), x => x.Projected.MilligramsPerKilogram),
            new(new Symbol("T0", "soil test now", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
            new(new Symbol("r", "factor to the ends of its likely range", "", 1), x => x.Factor.Value),
            new(new Symbol("C", "change until then", "mg/kg"), x => x.Change.Value),
            new(new Symbol("CH", "high end of that change", "mg/kg"), x => x.ChangeAtItsEnd.Value),
        ],
        new(new Symbol("H", "high end: the test reads more one time in ten", "mg/kg"), y => y.MilligramsPerKilogram),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1]), new Coefficient(v[2]), new Coefficient(v[3]), new Coefficient(v[4])),
        x => SoilConcentration.FromMilligramsPerKilogram(
            x.Projected.MilligramsPerKilogram + Together((x.Test.MilligramsPerKilogram * x.Factor.Value) - x.Test.MilligramsPerKilogram, x.ChangeAtItsEnd.Value - x.Change.Value)),
        NoExample);

    /// <summary>Years until a test that moves by the same amount each year reaches a level: t = (L − T) / D.</summary>
    public static Formula<(SoilConcentration Level, SoilConcentration Test, Coefficient Pace), Coefficient> YearsToLevel { get; } = new(
        "years-to-level",
        "Years until the soil test reaches a level",
        "t = (L − T) / D",
        Citation.OurArithmetic,
        [
            new(new Symbol("L", "level", "mg/kg", 0), x => x.Level.MilligramsPerKilogram),
            new(new Symbol("T", "soil test now, with what was spread once", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
            new(new Symbol("D", "change in a year", "mg/kg"), x => x.Pace.Value),
        ],
        new(new Symbol("t", "years; below zero: the test moves away from the level", "year"), y => y.Value),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1]), new Coefficient(v[2])),
        x => new Coefficient((x.Level.MilligramsPerKilogram - x.Test.MilligramsPerKilogram) / x.Pace.Value),
        NoExample);

    /// <summary>Years of cropping without phosphorus until a test has fallen to a level, by a share a year.</summary>
    public static Formula<(SoilConcentration Test, SoilConcentration Level, Coefficient Share), Coefficient> YearsToFall { get; } = new(
        "years-to-fall",
        "Years of cropping without phosphorus until the test has fallen to a level",
        "t = ln(P0 / P1) / ln(100 / (100 − s))",
        FiftySixFields,
        [
            new(new Symbol("P0", "soil test now", "mg/kg", 0.001), x => x.Test.MilligramsPerKilogram),
            new(new Symbol("P1", "level", "mg/kg", 0.001), x => x.Level.MilligramsPerKilogram),
            new(new Symbol("s", "share by which the test falls in a year", "%", 0.01, 99), x => x.Share.Value),
        ],
        new(new Symbol("t", "years", "year"), y => y.Value),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1]), new Coefficient(v[2])),
        x => new Coefficient(Math.Log(x.Test.MilligramsPerKilogram / x.Level.MilligramsPerKilogram) / Math.Log(100 / (100 - x.Share.Value))));

    /// <summary>Years in which an exponential fall halves a test: t = ln(2) / k.</summary>
    public static Formula<Coefficient, Coefficient> HalfLife { get; } = new(
        "half-life-of-test",
        "Years in which the soil test halves",
        "t = ln(2) / k",
        FiftySixFields,
        [new(new Symbol("k", "rate of the exponential fall", "1/year", 1e-6, 10), x => x.Value)],
        new(new Symbol("t", "years until half is left", "year"), y => y.Value),
        v => new Coefficient(v[0]),
        x => new Coefficient(Math.Log(2) / x.Value),
        "The abstract prints half-lives beside yearly shares, not the rate k; checked against both half-lives.");

    /// <summary>
    /// The general published model: what is spread lifts the test at once, and the whole then falls exponentially. Its coefficients belong
    /// to one soil and one extractant; none is held.
    /// </summary>
    public static Formula<(SoilConcentration Test, Coefficient Efficiency, MassPerArea Applied, Coefficient Decline, Coefficient Years), SoilConcentration> ExponentialTest { get; } = new(
        "exponential-test",
        "Soil test after a spreading, falling exponentially",
        "P = (P0 + e × A) × exp(−d × t)",
        PhosphorusModel,
        [
            new(new Symbol("P0", "soil test before spreading", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
            new(new Symbol("e", "rise of the test for one unit spread", "mg/kg per lb/acre", 0), x => x.Efficiency.Value),
            new(new Symbol("A", "spread", "lb/acre", 0), x => x.Applied.PoundsPerAcre),
            new(new Symbol("d", "rate of the fall", "1/year", 0, 10), x => x.Decline.Value),
            new(new Symbol("t", "years", "year", 0, 100), x => x.Years.Value),
        ],
        new(new Symbol("P", "soil test then", "mg/kg"), y => y.MilligramsPerKilogram),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), new Coefficient(v[1]), MassPerArea.FromPoundsPerAcre(v[2]), new Coefficient(v[3]), new Coefficient(v[4])),
        x => SoilConcentration.FromMilligramsPerKilogram((x.Test.MilligramsPerKilogram + (x.Efficiency.Value * x.Applied.PoundsPerAcre)) * Math.Exp(-x.Decline.Value * x.Years.Value)),
        "The abstract prints the form and no coefficients.");

    /// <summary>Compost in a layer: M = d × 43560 / 12 / 27 × w.</summary>
    public static Formula<(Coefficient Inches, Coefficient PoundsPerCubicYard), MassPerArea> LayerOfCompost { get; } = new(
        "layer-of-compost",
        "Weight of a layer",
        "M = d × 43560 / 12 / 27 × w",
        Citation.OurArithmetic,
        [
            new(new Symbol("d", "depth of the layer", "in", 0, 24), x => x.Inches.Value),
            new(new Symbol("w", "weight of a cubic yard as spread", "lb/cubic-yard", 1, 4000), x => x.PoundsPerCubicYard.Value),
        ],
        new(new Symbol("M", "weight on an acre", "lb/acre"), y => y.PoundsPerAcre),
        v => (new Coefficient(v[0]), new Coefficient(v[1])),
        x => MassPerArea.FromPoundsPerAcre(x.Inches.Value * 43560 / 12 / 27 * x.PoundsPerCubicYard.Value),
        "Plain geometry; no publication that was read works it as an example.");

    /// <summary>Years of harvests that a spreading of phosphate lasts for: y = A / R.</summary>
    public static Formula<(Rate<TotalP2O5> Applied, Rate<TotalP2O5> Removed), Coefficient> YearsOfRemoval { get; } = new(
        "years-of-removal",
        "Years of harvests that take away as much phosphate as was spread",
        "y = A / R",
        Citation.OurArithmetic,
        [
            new(new Symbol("A", "total phosphate (P2O5) spread", "lb/acre", 0), x => x.Applied.PoundsPerAcre),
            new(new Symbol("R", "phosphate (P2O5) that the harvests of a year take away", "lb/acre", 1e-6), x => x.Removed.PoundsPerAcre),
        ],
        new(new Symbol("y", "years", "year"), y => y.Value),
        v => (Rate<TotalP2O5>.FromPoundsPerAcre(v[0]), Rate<TotalP2O5>.FromPoundsPerAcre(v[1])),
        x => new Coefficient(x.Applied.PoundsPerAcre / x.Removed.PoundsPerAcre),
        NoExample);

    // Two independent distances as one.
    private static double Together(double first, double second) => Math.Sqrt((first * first) + (second * second));
}
