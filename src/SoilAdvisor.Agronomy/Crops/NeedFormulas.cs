using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>What a harvest removes, what a soil is built up by, and what is left to spread.</summary>
public static class NeedFormulas
{
    private const string RecalledCoefficients = "The coefficients are recalled from the 1995 bulletin; no example of it was read.";

    private static readonly Citation TriState1995 = new("tristate-1995", null, Evidence.FromMemory);

    /// <summary>Nutrient that a harvest by weight takes away.</summary>
    public static Formula<(MassPerArea Yield, MassShare Content), MassPerArea> Removal { get; } = new(
        "crop-removal",
        "Nutrient that the harvest takes away",
        "R = Y × c",
        Citation.OurArithmetic,
        [
            new(new Symbol("Y", "harvest", "ton/acre", 0), x => x.Yield.PoundsPerAcre / 2000),
            new(new Symbol("c", "content of the harvest", "lb/ton", 0), x => x.Content.PoundsPerShortTon),
        ],
        new(new Symbol("R", "removal", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0] * 2000), MassShare.FromPoundsPerShortTon(v[1])),
        x => x.Content.In(x.Yield));

    /// <summary>Nutrient that a harvest counted in bushels takes away. A bushel is a volume: no weight is assumed.</summary>
    public static Formula<(Coefficient Bushels, Coefficient Content), MassPerArea> RemovalByBushel { get; } = new(
        "crop-removal-by-bushel",
        "Nutrient that the harvest takes away",
        "R = Y × c",
        Citation.OurArithmetic,
        [
            new(new Symbol("Y", "harvest", "bu/acre", 0), x => x.Bushels.Value),
            new(new Symbol("c", "content of the harvest", "lb/bu", 0), x => x.Content.Value),
        ],
        new(new Symbol("R", "removal", "lb/acre"), y => y.PoundsPerAcre),
        v => (new Coefficient(v[0]), new Coefficient(v[1])),
        x => MassPerArea.FromPoundsPerAcre(x.Bushels.Value * x.Content.Value));

    /// <summary>Soil potassium below which potash is built up: a line on the exchange capacity.</summary>
    public static Formula<(Coefficient Base, Coefficient PerCec, ExchangeCapacity Cec), SoilConcentration> CriticalPotassium { get; } = new(
        "critical-potassium",
        "Critical soil potassium",
        "C = a + b × CEC",
        new Citation("mwvg22", "p. 16", Evidence.Ours),
        [
            new(new Symbol("a", "critical potassium at a CEC of zero", "mg/kg", 0), x => x.Base.Value),
            new(new Symbol("b", "rise per unit of CEC", "mg/kg per meq/100g", 0), x => x.PerCec.Value),
            new(new Symbol("CEC", "cation exchange capacity", "meq/100g", 0), x => x.Cec.MilliequivalentsPer100Grams),
        ],
        new(new Symbol("C", "critical soil potassium", "mg/kg"), y => y.MilligramsPerKilogram),
        v => (new Coefficient(v[0]), new Coefficient(v[1]), ExchangeCapacity.FromMilliequivalentsPer100Grams(v[2])),
        x => SoilConcentration.FromMilligramsPerKilogram(x.Base.Value + (x.PerCec.Value * x.Cec.MilliequivalentsPer100Grams)));

    /// <summary>Phosphate a year that brings a soil up to the critical level over the years of the rule; nothing at or above it.</summary>
    public static Formula<(Coefficient PerYear, SoilConcentration Critical, SoilConcentration Test), Rate<AvailableP2O5>> BuildUpPhosphate { get; } = new(
        "build-up-phosphate",
        "Build-up phosphate for one year",
        "B = b × max(C − P, 0)",
        TriState1995,
        [
            new(new Symbol("b", "phosphate a year for each mg/kg below the critical level", "lb/acre per mg/kg", 0), x => x.PerYear.Value),
            new(new Symbol("C", "critical soil phosphorus", "mg/kg", 0), x => x.Critical.MilligramsPerKilogram),
            new(new Symbol("P", "soil test phosphorus", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
        ],
        new(new Symbol("B", "build-up phosphate (P2O5)", "lb/acre"), y => y.PoundsPerAcre),
        v => (new Coefficient(v[0]), SoilConcentration.FromMilligramsPerKilogram(v[1]), SoilConcentration.FromMilligramsPerKilogram(v[2])),
        x => Rate<AvailableP2O5>.FromPoundsPerAcre(x.PerYear.Value * Math.Max(x.Critical.MilligramsPerKilogram - x.Test.MilligramsPerKilogram, 0)),
        RecalledCoefficients);

    /// <summary>Potash a year that brings a soil up to the critical level over the years of the rule; nothing at or above it.</summary>
    public static Formula<(Coefficient Base, Coefficient PerCec, Coefficient Constant, ExchangeCapacity Cec, SoilConcentration Critical, SoilConcentration Test), Rate<K2O>> BuildUpPotash { get; } = new(
        "build-up-potash",
        "Build-up potash for one year",
        "B = (a + b × CEC) × (C − K) + k below C; 0 from C on",
        TriState1995,
        [
            new(new Symbol("a", "potash a year for each mg/kg below the critical level at a CEC of zero", "lb/acre per mg/kg", 0), x => x.Base.Value),
            new(new Symbol("b", "rise of that amount per unit of CEC", "lb/acre per mg/kg per meq/100g", 0), x => x.PerCec.Value),
            new(new Symbol("k", "potash added to every build-up rate", "lb/acre", 0), x => x.Constant.Value),
            new(new Symbol("CEC", "cation exchange capacity", "meq/100g", 0), x => x.Cec.MilliequivalentsPer100Grams),
            new(new Symbol("C", "critical soil potassium", "mg/kg", 0), x => x.Critical.MilligramsPerKilogram),
            new(new Symbol("K", "soil test potassium", "mg/kg", 0), x => x.Test.MilligramsPerKilogram),
        ],
        new(new Symbol("B", "build-up potash (K2O)", "lb/acre"), y => y.PoundsPerAcre),
        v => (new Coefficient(v[0]), new Coefficient(v[1]), new Coefficient(v[2]), ExchangeCapacity.FromMilliequivalentsPer100Grams(v[3]), SoilConcentration.FromMilligramsPerKilogram(v[4]), SoilConcentration.FromMilligramsPerKilogram(v[5])),
        x => x.Test.MilligramsPerKilogram < x.Critical.MilligramsPerKilogram
            ? Rate<K2O>.FromPoundsPerAcre(((x.Base.Value + (x.PerCec.Value * x.Cec.MilliequivalentsPer100Grams)) * (x.Critical.MilligramsPerKilogram - x.Test.MilligramsPerKilogram)) + x.Constant.Value)
            : default,
        RecalledCoefficients);

    /// <summary>What a build-up rule gives in one year: the season's removal and the year's build-up.</summary>
    public static Formula<(MassPerArea Removal, MassPerArea BuildUp), MassPerArea> RemovalAndBuildUp { get; } = new(
        "removal-and-build-up",
        "Maintenance and build-up together",
        "N = R + B",
        Citation.OurArithmetic,
        [
            new(new Symbol("R", "removal of the season's harvests", "lb/acre", 0), x => x.Removal.PoundsPerAcre),
            new(new Symbol("B", "build-up for one year", "lb/acre", 0), x => x.BuildUp.PoundsPerAcre),
        ],
        new(new Symbol("N", "need", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassPerArea.FromPoundsPerAcre(v[1])),
        x => x.Removal + x.BuildUp,
        "The rule was read without a worked example.");

    /// <summary>Two removals of one season added.</summary>
    public static Formula<(MassPerArea Earlier, MassPerArea Next), MassPerArea> SeasonRemoval { get; } = new(
        "season-removal",
        "Removal of the season so far",
        "R = R1 + R2",
        Citation.OurArithmetic,
        [
            new(new Symbol("R1", "removal of the harvests before", "lb/acre", 0), x => x.Earlier.PoundsPerAcre),
            new(new Symbol("R2", "removal of this harvest", "lb/acre", 0), x => x.Next.PoundsPerAcre),
        ],
        new(new Symbol("R", "removal of the season", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassPerArea.FromPoundsPerAcre(v[1])),
        x => x.Earlier + x.Next,
        "A sum of two lines above it.");

    /// <summary>What is left to spread once credits are taken off; never below zero. A credit below zero raises it.</summary>
    public static Formula<(MassPerArea Need, MassPerArea Credits), MassPerArea> NeedLessCredits { get; } = new(
        "need-less-credits",
        "Need after credits",
        "F = max(N − C, 0)",
        Citation.OurArithmetic,
        [
            new(new Symbol("N", "need", "lb/acre"), x => x.Need.PoundsPerAcre),
            new(new Symbol("C", "credits, low end", "lb/acre"), x => x.Credits.PoundsPerAcre),
        ],
        new(new Symbol("F", "left to spread", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassPerArea.FromPoundsPerAcre(v[1])),
        x => MassPerArea.Larger(x.Need - x.Credits, default),
        "Published credits are subtracted in words; no worked example was read.");
}
