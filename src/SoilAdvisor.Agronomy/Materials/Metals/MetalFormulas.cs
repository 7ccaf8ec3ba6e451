using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials.Metals;

/// <summary>What a dressing brings of a metal, and the dressing that a limit allows.</summary>
public static class MetalFormulas
{
    private static readonly Citation AppendixA = new("cfr503-appendix-a", "equations 1 and 2", Evidence.Seen);

    /// <summary>Metal that a dressing brings, metric: A = C × R × 0.001, dry tonnes by mg/kg.</summary>
    public static Formula<(MetalContent Content, MassPerArea Dry), MassPerArea> Load { get; } = new(
        "metal-load",
        "Metal that a dressing brings",
        "A = C × R × 0.001",
        AppendixA,
        [
            new(new Symbol("C", "metal in dry matter", "mg/kg", 0), x => x.Content.MilligramsPerKilogramDry),
            new(new Symbol("R", "dressing, dry matter", "t/ha", 0), x => x.Dry.KilogramsPerHectare / 1000),
        ],
        new(new Symbol("A", "metal brought", "kg/ha"), y => y.KilogramsPerHectare),
        v => (MetalContent.FromMilligramsPerKilogramDry(v[0]), MassPerArea.FromKilogramsPerHectare(v[1] * 1000)),
        x => x.Dry * (x.Content.MilligramsPerKilogramDry * 1e-6),
        "The regulation prints the equation without an example; a hand-worked exercise checks it.");

    /// <summary>The same in pounds: A = C × R × 0.002, dry short tons by mg/kg.</summary>
    public static Formula<(MetalContent Content, MassPerArea Dry), MassPerArea> LoadPerAcre { get; } = new(
        "metal-load-per-acre",
        "Metal that a dressing brings, in pounds",
        "A = C × R × 0.002",
        Citation.UnitDefinitions,
        [
            new(new Symbol("C", "metal in dry matter", "mg/kg", 0), x => x.Content.MilligramsPerKilogramDry),
            new(new Symbol("R", "dressing, dry matter", "ton/acre", 0), x => x.Dry.PoundsPerAcre / 2000),
        ],
        new(new Symbol("A", "metal brought", "lb/acre"), y => y.PoundsPerAcre),
        v => (MetalContent.FromMilligramsPerKilogramDry(v[0]), MassPerArea.FromPoundsPerAcre(v[1] * 2000)),
        x => x.Dry * (x.Content.MilligramsPerKilogramDry * 1e-6),
        "Unit arithmetic: 2000 lb of dry matter at 1 mg/kg hold 0.002 lb; a hand-worked exercise checks it.");

    /// <summary>The dressing, as spread, that brings just the limit: R = A × 1000 / C / ((100 − w) / 100).</summary>
    public static Formula<(MassPerArea Limit, MetalContent Content, MassShare Moisture), MassPerArea> LargestDressing { get; } = new(
        "metal-largest-dressing",
        "Largest dressing that a limit on a metal allows",
        "R = A × 1000 / C × 100 / (100 − w)",
        AppendixA,
        [
            new(new Symbol("A", "most of the metal in a year", "kg/ha", 0), x => x.Limit.KilogramsPerHectare),
            new(new Symbol("C", "metal in dry matter", "mg/kg", 0.000001), x => x.Content.MilligramsPerKilogramDry),
            new(new Symbol("w", "moisture of the material as it is spread", "%", 0, 99.9), x => x.Moisture.Percent),
        ],
        new(new Symbol("R", "dressing as it is spread", "t/ha"), y => y.KilogramsPerHectare / 1000),
        v => (MassPerArea.FromKilogramsPerHectare(v[0]), MetalContent.FromMilligramsPerKilogramDry(v[1]), MassShare.FromPercent(v[2])),
        x => x.Limit * (1 / (x.Content.MilligramsPerKilogramDry * 1e-6) / (1 - x.Moisture.Fraction)),
        "The regulation prints the equation for dry matter without an example; a hand-worked exercise checks it.");

    /// <summary>Highest content that a label allows: L = f × p.</summary>
    public static Formula<(Coefficient ForEachPercent, MassShare Guaranteed), MetalContent> AllowedByLabel { get; } = new(
        "metal-allowed-by-label",
        "Highest content of a metal for a guaranteed phosphate",
        "L = f × p",
        new Citation("aapfco-maine", "section 8", Evidence.Seen),
        [
            new(new Symbol("f", "limit for each percent", "mg/kg", 0), x => x.ForEachPercent.Value),
            new(new Symbol("p", "P2O5 that the label guarantees, or the rule's least", "%", 0, 100), x => x.Guaranteed.Percent),
        ],
        new(new Symbol("L", "highest content", "mg/kg"), y => y.MilligramsPerKilogramDry),
        v => (new Coefficient(v[0]), MassShare.FromPercent(v[1])),
        x => MetalContent.FromMilligramsPerKilogramDry(x.ForEachPercent.Value * x.Guaranteed.Percent),
        "The rule prints the factors without an example; a hand-worked exercise checks it.");
}
