using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Published relations between soil pH by different methods. Each was found on its own set of soils: the result is an estimate.</summary>
public static class PhScaleFormulas
{
    private const string NoExample = "The publication prints the relation without a worked example that was read.";

    /// <summary>Water from calcium chloride, the reporting convention of Georgia. Checked by its own statement that 5.4 stands for 6.0.</summary>
    public static Formula<ScaledPh<CalciumChlorideScale>, SoilPh> WaterFromCalciumChlorideGeorgia { get; } = new(
        "water-ph-from-calcium-chloride-georgia",
        "pH in water from pH in calcium chloride, Georgia",
        "pHw = pHCa + 0.6",
        new Citation("sera6-fs3", null, Evidence.Seen),
        [new(new Symbol("pHCa", "pH in 0.01 M calcium chloride", "pH", 0, 13.4), x => x.Value)],
        new(new Symbol("pHw", "pH in water", "pH"), y => y.Value),
        v => new ScaledPh<CalciumChlorideScale>(v[0]),
        x => new SoilPh(x.Value + 0.6));

    /// <summary>Water from calcium chloride, the inverse of the relation of New South Wales; non-saline soils with a net negative charge.</summary>
    public static Formula<ScaledPh<CalciumChlorideScale>, SoilPh> WaterFromCalciumChloride { get; } = new(
        "water-ph-from-calcium-chloride",
        "pH in water from pH in calcium chloride",
        "pHw = (pHCa + 0.9) / 1.05",
        new Citation("soilsci1988", null, Evidence.Seen),
        [new(new Symbol("pHCa", "pH in 0.01 M calcium chloride, 2.5 parts to 1", "pH", 0, 13), x => x.Value)],
        new(new Symbol("pHw", "pH in water, 2.5 parts to 1", "pH"), y => y.Value),
        v => new ScaledPh<CalciumChlorideScale>(v[0]),
        x => new SoilPh((x.Value + 0.9) / 1.05),
        NoExample);

    /// <summary>Dilute water from potassium chloride; 200 soils of Poland.</summary>
    public static Formula<ScaledPh<PotassiumChlorideScale>, ScaledPh<DiluteWaterScale>> DiluteWaterFromPotassiumChloride { get; } = new(
        "dilute-water-ph-from-potassium-chloride",
        "pH in five parts of water from pH in potassium chloride",
        "pHw5 = −1.95 + 11.58 × log10(pHKCl)",
        new Citation("kabala2016", null, Evidence.Seen),
        [new(new Symbol("pHKCl", "pH in 1 M potassium chloride, 2.5 parts to 1", "pH", 2, 9), x => x.Value)],
        new(new Symbol("pHw5", "pH in water, 5 parts to 1", "pH"), y => y.Value),
        v => new ScaledPh<PotassiumChlorideScale>(v[0]),
        x => new ScaledPh<DiluteWaterScale>(-1.95 + (11.58 * Math.Log10(x.Value))),
        NoExample);

    /// <summary>Dilute water from less dilute water; 200 soils of Poland.</summary>
    public static Formula<ScaledPh<HalfDiluteWaterScale>, ScaledPh<DiluteWaterScale>> DiluteWaterFromHalfDilute { get; } = new(
        "dilute-water-ph-from-half-dilute",
        "pH in five parts of water from pH in two and a half",
        "pHw5 = 0.14 + 0.99 × pHw2.5",
        new Citation("kabala2016", null, Evidence.Seen),
        [new(new Symbol("pHw2.5", "pH in water, 2.5 parts to 1", "pH", 0, 14), x => x.Value)],
        new(new Symbol("pHw5", "pH in water, 5 parts to 1", "pH"), y => y.Value),
        v => new ScaledPh<HalfDiluteWaterScale>(v[0]),
        x => new ScaledPh<DiluteWaterScale>(0.14 + (0.99 * x.Value)),
        NoExample);

    /// <summary>One to one water from dilute water, the inverse of a relation found on 563 soils of the United States; its error is 0.44.</summary>
    public static Formula<ScaledPh<DiluteWaterScale>, SoilPh> WaterFromDilute { get; } = new(
        "water-ph-from-dilute-water",
        "pH in one part of water from pH in five",
        "pHw = (pHw5 + 0.51) / 1.06",
        new Citation("geoderma2014", null, Evidence.Seen),
        [new(new Symbol("pHw5", "pH in water, 5 parts to 1", "pH", 0, 14), x => x.Value)],
        new(new Symbol("pHw", "pH in water, 1 part to 1", "pH"), y => y.Value),
        v => new ScaledPh<DiluteWaterScale>(v[0]),
        x => new SoilPh((x.Value + 0.51) / 1.06),
        NoExample);
}
