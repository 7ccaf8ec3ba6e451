using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>From a concentration to a rate, and from a rate per acre to the ground that is really spread.</summary>
public static class AreaFormulas
{
    /// <summary>
    /// Mass of an element in the sampled layer. The factor is exact: 1 mg/kg × 1 g/cm3 × 1 in of soil is 0.0000254 kg/m2, and one pound an
    /// acre is 0.45359237 kg on 4046.8564224 m2.
    /// </summary>
    public static Formula<(SoilConcentration Concentration, Density BulkDensity, Length Depth), MassPerArea> ConcentrationToMassPerArea { get; } = new(
        "concentration-to-mass-per-area",
        "Amount of an element in the sampled layer",
        "A = c × D × d × 0.2266135",
        Citation.UnitDefinitions,
        [
            new(new Symbol("c", "concentration in dry soil", "mg/kg", 0), x => x.Concentration.MilligramsPerKilogram),
            new(new Symbol("D", "bulk density of the layer", "g/cm3", 0.05, 2.2), x => x.BulkDensity.GramsPerCubicCentimeter),
            new(new Symbol("d", "depth of the layer", "in", 0), x => x.Depth.Inches),
        ],
        new(new Symbol("A", "amount in the layer", "lb/acre"), y => y.PoundsPerAcre),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), Density.FromGramsPerCubicCentimeter(v[1]), Length.FromInches(v[2])),
        x => MassPerArea.Of(Mass.FromMilligrams(x.Concentration.MilligramsPerKilogram * x.BulkDensity.KilogramsPerCubicMeter * x.Depth.Meters), Area.FromSquareMeters(1)),
        "Exact unit arithmetic; no publication that was read works an example with a depth and a bulk density.");

    /// <summary>The same in metric measure: 1 mg/kg × 1 g/cm3 × 1 cm of soil is 0.00001 kg/m2, which is 0.1 kg/ha.</summary>
    public static Formula<(SoilConcentration Concentration, Density BulkDensity, Length Depth), MassPerArea> ConcentrationToMassPerHectare { get; } = new(
        "concentration-to-mass-per-hectare",
        "Amount of an element in the sampled layer, metric",
        "A = c × D × d × 0.1",
        Citation.UnitDefinitions,
        [
            new(new Symbol("c", "concentration in dry soil", "mg/kg", 0), x => x.Concentration.MilligramsPerKilogram),
            new(new Symbol("D", "bulk density of the layer", "g/cm3", 0.05, 2.2), x => x.BulkDensity.GramsPerCubicCentimeter),
            new(new Symbol("d", "depth of the layer", "cm", 0), x => x.Depth.Centimeters),
        ],
        new(new Symbol("A", "amount in the layer", "kg/ha"), y => y.KilogramsPerHectare),
        v => (SoilConcentration.FromMilligramsPerKilogram(v[0]), Density.FromGramsPerCubicCentimeter(v[1]), Length.FromCentimeters(v[2])),
        x => ConcentrationToMassPerArea.Of(x),
        "Exact unit arithmetic; no publication that was read works an example with a depth and a bulk density.");

    /// <summary>From a laboratory that scoops to mg/kg, by the weight of its scoop. Only that weight will do; a field's bulk density will not.</summary>
    public static Formula<(VolumeConcentration Content, SampleWeight Weight), SoilConcentration> VolumeToMass { get; } = new(
        "volume-to-mass",
        "Concentration by mass from one by volume",
        "c = v / w",
        Citation.UnitDefinitions,
        [
            new(new Symbol("v", "concentration by volume of ground soil", "mg/dm3", 0), x => x.Content.MilligramsPerCubicDecimetre),
            new(new Symbol("w", "weight of the ground sample for its volume, as the laboratory reports it", "g/cm3", 0.1, 2), x => x.Weight.GramsPerCubicCentimetre),
        ],
        new(new Symbol("c", "concentration by mass", "mg/kg"), y => y.MilligramsPerKilogram),
        v => (VolumeConcentration.FromMilligramsPerCubicDecimetre(v[0]), SampleWeight.FromGramsPerCubicCentimetre(v[1])),
        x => SoilConcentration.FromMilligramsPerKilogram(x.Content.MilligramsPerCubicDecimetre / x.Weight.GramsPerCubicCentimetre),
        "Exact unit arithmetic; no publication that was read works an example.");

    /// <summary>Conductivity in the unit of hand meters: 1 dS/m is 1 mmho/cm and 1000 µS/cm.</summary>
    public static Formula<Conductivity, Conductivity> ConductivityInMicrosiemens { get; } = new(
        "conductivity-in-microsiemens",
        "Conductivity in microsiemens",
        "m = k × 1000",
        Citation.UnitDefinitions,
        [new(new Symbol("k", "conductivity, the same number in mmho/cm", "dS/m", 0), x => x.DecisiemensPerMetre)],
        new(new Symbol("m", "conductivity", "µS/cm"), y => y.MicrosiemensPerCentimetre),
        v => Conductivity.FromDecisiemensPerMetre(v[0]),
        x => x,
        "A change of prefix; publications state it without an example.");

    /// <summary>The same rate on 1000 square feet: an acre is 43,560 square feet.</summary>
    public static Formula<MassPerArea, MassPerArea> PerAcreToPer1000SquareFeet { get; } = new(
        "per-acre-to-per-1000-square-feet",
        "Rate on 1000 square feet",
        "r = R × 1000 / 43560",
        Citation.UnitDefinitions,
        [new(new Symbol("R", "rate", "lb/acre"), x => x.PoundsPerAcre)],
        new(new Symbol("r", "rate", "lb/1000 sq ft"), y => y.PoundsPer1000SquareFeet),
        v => MassPerArea.FromPoundsPerAcre(v[0]),
        x => x);

    /// <summary>What one bed takes of a rate per acre of ground spread.</summary>
    public static Formula<(MassPerArea Rate, Area Bed), Mass> RatePerBed { get; } = new(
        "rate-per-bed",
        "Amount for the bed",
        "m = R × A / 43560",
        Citation.UnitDefinitions,
        [
            new(new Symbol("R", "rate per acre of ground spread", "lb/acre"), x => x.Rate.PoundsPerAcre),
            new(new Symbol("A", "ground that is spread", "sq ft", 0), x => x.Bed.SquareFeet),
        ],
        new(new Symbol("m", "amount for the bed", "lb"), y => y.Pounds),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), Area.FromSquareFeet(v[1])),
        x => x.Rate.On(x.Bed));

    /// <summary>Percent as pounds per short ton.</summary>
    public static Formula<MassShare, MassShare> PercentToPoundsPerTon { get; } = new(
        "percent-to-pounds-per-ton",
        "Percent as pounds per ton",
        "s = p × 20",
        Citation.UnitDefinitions,
        [new(new Symbol("p", "content", "%"), x => x.Percent)],
        new(new Symbol("s", "content", "lb/ton"), y => y.PoundsPerShortTon),
        v => MassShare.FromPercent(v[0]),
        x => x);
}
