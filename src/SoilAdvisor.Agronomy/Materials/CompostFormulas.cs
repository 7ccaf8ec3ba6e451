using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>Mixing two feedstocks into a heap: a balance of water, carbon and nitrogen. Ratios are never averaged; masses are summed first.</summary>
public static class CompostFormulas
{
    /// <summary>Moisture of two feedstocks mixed.</summary>
    public static Formula<(Mass First, MassShare FirstMoisture, Mass Second, MassShare SecondMoisture), MassShare> MoistureOfMix { get; } = new(
        "compost-moisture-of-mix",
        "Moisture of a mix",
        "G = (Q1 × M1 + Q2 × M2) / (Q1 + Q2)",
        Citation.OurArithmetic,
        [
            new(new Symbol("Q1", "first feedstock, wet", "lb", 0.001), x => x.First.Pounds),
            new(new Symbol("M1", "its moisture", "%", 0, 100), x => x.FirstMoisture.Percent),
            new(new Symbol("Q2", "second feedstock, wet", "lb", 0), x => x.Second.Pounds),
            new(new Symbol("M2", "its moisture", "%", 0, 100), x => x.SecondMoisture.Percent),
        ],
        new(new Symbol("G", "moisture of the mix", "%"), y => y.Percent),
        v => (Mass.FromPounds(v[0]), MassShare.FromPercent(v[1]), Mass.FromPounds(v[2]), MassShare.FromPercent(v[3])),
        x => MassShare.FromFraction(((x.First.Kilograms * x.FirstMoisture.Fraction) + (x.Second.Kilograms * x.SecondMoisture.Fraction)) / (x.First.Kilograms + x.Second.Kilograms)));

    /// <summary>Carbon to nitrogen ratio of two feedstocks mixed.</summary>
    public static Formula<(Mass First, MassShare FirstCarbon, MassShare FirstNitrogen, MassShare FirstMoisture, Mass Second, MassShare SecondCarbon, MassShare SecondNitrogen, MassShare SecondMoisture), Coefficient> CarbonToNitrogenOfMix { get; } = new(
        "compost-carbon-to-nitrogen-of-mix",
        "Carbon to nitrogen ratio of a mix",
        "R = (Q1 × C1 × (100 − M1) + Q2 × C2 × (100 − M2)) / (Q1 × N1 × (100 − M1) + Q2 × N2 × (100 − M2))",
        Citation.OurArithmetic,
        [
            new(new Symbol("Q1", "first feedstock, wet", "lb", 0.001), x => x.First.Pounds),
            new(new Symbol("C1", "its carbon, of dry matter", "%", 0, 100), x => x.FirstCarbon.Percent),
            new(new Symbol("N1", "its nitrogen, of dry matter", "%", 0.001, 100), x => x.FirstNitrogen.Percent),
            new(new Symbol("M1", "its moisture", "%", 0, 99.9), x => x.FirstMoisture.Percent),
            new(new Symbol("Q2", "second feedstock, wet", "lb", 0), x => x.Second.Pounds),
            new(new Symbol("C2", "its carbon, of dry matter", "%", 0, 100), x => x.SecondCarbon.Percent),
            new(new Symbol("N2", "its nitrogen, of dry matter", "%", 0, 100), x => x.SecondNitrogen.Percent),
            new(new Symbol("M2", "its moisture", "%", 0, 100), x => x.SecondMoisture.Percent),
        ],
        new(new Symbol("R", "carbon to nitrogen ratio", ""), y => y.Value),
        v => (Mass.FromPounds(v[0]), MassShare.FromPercent(v[1]), MassShare.FromPercent(v[2]), MassShare.FromPercent(v[3]), Mass.FromPounds(v[4]), MassShare.FromPercent(v[5]), MassShare.FromPercent(v[6]), MassShare.FromPercent(v[7])),
        x => new Coefficient(
            ((x.First.Kilograms * x.FirstCarbon.Fraction * (1 - x.FirstMoisture.Fraction)) + (x.Second.Kilograms * x.SecondCarbon.Fraction * (1 - x.SecondMoisture.Fraction)))
            / ((x.First.Kilograms * x.FirstNitrogen.Fraction * (1 - x.FirstMoisture.Fraction)) + (x.Second.Kilograms * x.SecondNitrogen.Fraction * (1 - x.SecondMoisture.Fraction)))),
        "The source prints the balance in symbols; no worked example was read.");
}
