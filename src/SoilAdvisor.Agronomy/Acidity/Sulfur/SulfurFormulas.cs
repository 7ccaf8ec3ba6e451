using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>Published rules for elemental sulfur, and the chemistry that makes it futile on free lime.</summary>
public static class SulfurFormulas
{
    /// <summary>To stop above the goal of a sulfur table: the row of the goal is subtracted from the row of the start.</summary>
    public static Formula<(Rate<ElementalSulfur> FromStart, Rate<ElementalSulfur> FromGoal), Rate<ElementalSulfur>> ByDifference { get; } = new(
        "sulfur-by-difference",
        "Elemental sulfur between two rows of a table",
        "S = max(R1 − R2, 0)",
        Citation.OurArithmetic,
        [
            new(new Symbol("R1", "printed sulfur from the soil's pH", "lb/acre", 0), x => x.FromStart.PoundsPerAcre),
            new(new Symbol("R2", "printed sulfur from the goal's pH", "lb/acre", 0), x => x.FromGoal.PoundsPerAcre),
        ],
        new(new Symbol("S", "elemental sulfur", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<ElementalSulfur>.FromPoundsPerAcre(v[0]), Rate<ElementalSulfur>.FromPoundsPerAcre(v[1])),
        x => x.FromStart > x.FromGoal ? x.FromStart - x.FromGoal : default,
        "The difference is ours; the table prints the way to pH 4.5 only.");

    /// <summary>Tennessee, home-garden blueberries: so much for each tenth of pH above the goal, more on clay and less on sand.</summary>
    public static Formula<(Coefficient PerTenth, SoilPh Ph, SoilPh Goal, Coefficient Texture), Rate<ElementalSulfur>> Tennessee { get; } = new(
        "sulfur-tennessee",
        "Elemental sulfur for blueberries, Tennessee",
        "S = k × max(pH − T, 0) × 10 × t",
        new Citation("ut-blueberry", null, Evidence.Seen),
        [
            new(new Symbol("k", "sulfur for a tenth of pH on silt loam", "lb/1000 sq ft", 0), x => x.PerTenth.Value),
            new(new Symbol("pH", "soil pH in water", "pH", 0, 14), x => x.Ph.Value),
            new(new Symbol("T", "goal of the rule", "pH", 0, 14), x => x.Goal.Value),
            new(new Symbol("t", "texture: 1 silt loam, 4/3 clay, 2/3 sand", "", 0, 2), x => x.Texture.Value),
        ],
        new(new Symbol("S", "elemental sulfur", "lb/1000 sq ft"), y => y.Amount.PoundsPer1000SquareFeet),
        v => (new Coefficient(v[0]), new SoilPh(v[1]), new SoilPh(v[2]), new Coefficient(v[3])),
        x => new Rate<ElementalSulfur>(MassPerArea.FromPoundsPer1000SquareFeet(x.PerTenth.Value * Math.Max(x.Ph.Value - x.Goal.Value, 0) * 10 * x.Texture.Value)),
        "The page prints the rule without a worked example that was read.");

    /// <summary>United States extension network, blueberries: so much for each unit of pH.</summary>
    public static Formula<(Coefficient PerUnit, SoilPh Ph, SoilPh Goal), Rate<ElementalSulfur>> Extension { get; } = new(
        "sulfur-extension",
        "Elemental sulfur for blueberries, extension network",
        "S = k × max(pH − T, 0)",
        new Citation("ext-blueberry", null, Evidence.Seen),
        [
            new(new Symbol("k", "sulfur for a unit of pH: sand 1, heavier 2", "lb/100 sq ft", 0), x => x.PerUnit.Value),
            new(new Symbol("pH", "soil pH in water", "pH", 0, 14), x => x.Ph.Value),
            new(new Symbol("T", "goal pH", "pH", 0, 14), x => x.Goal.Value),
        ],
        new(new Symbol("S", "elemental sulfur", "lb/100 sq ft"), y => y.Amount.PoundsPer1000SquareFeet / 10),
        v => (new Coefficient(v[0]), new SoilPh(v[1]), new SoilPh(v[2])),
        x => new Rate<ElementalSulfur>(MassPerArea.FromPoundsPer1000SquareFeet(x.PerUnit.Value * Math.Max(x.Ph.Value - x.Goal.Value, 0) * 10)),
        "The page prints the rule without a worked example that was read.");

    /// <summary>Sulfur that free lime takes before the pH moves at all: one S gives acid for one CaCO3.</summary>
    public static Formula<(MassShare FreeLime, MassPerArea Soil, Coefficient Dissolved), Rate<ElementalSulfur>> ForFreeLime { get; } = new(
        "sulfur-for-free-lime",
        "Elemental sulfur that free lime takes first",
        "S = c / 100 × M / d",
        Citation.OurArithmetic,
        [
            new(new Symbol("c", "free lime in the soil", "% CaCO3", 0, 100), x => x.FreeLime.Percent),
            new(new Symbol("M", "soil in the slice", "lb/acre", 0), x => x.Soil.PoundsPerAcre),
            new(new Symbol("d", "calcium carbonate that a pound of sulfur dissolves", "lb/lb", 1, 10), x => x.Dissolved.Value),
        ],
        new(new Symbol("S", "elemental sulfur", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassShare.FromPercent(v[0]), MassPerArea.FromPoundsPerAcre(v[1]), new Coefficient(v[2])),
        x => new Rate<ElementalSulfur>(x.FreeLime.In(x.Soil) * (1 / x.Dissolved.Value)),
        "Molar masses; no publication that was read works an example.");
}
