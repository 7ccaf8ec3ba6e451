using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Composting;

/// <summary>The recipe of a compost heap: a balance of water, carbon and nitrogen. Ratios are never averaged; masses are summed first.</summary>
public static class CompostFormulas
{
    private const int MostFeedstocks = 12;

    private static readonly Citation Moisture = new("cornell-moist", null, Evidence.Seen);
    private static readonly Citation CarbonAndNitrogen = new("cornell-cn", null, Evidence.FromMemory);

    /// <summary>Moisture of a mix of two to twelve feedstocks.</summary>
    public static SeriesFormula<MoistFeedstock, MassShare> MoistureOfMix { get; } = new(2, MostFeedstocks, n => new(
        "compost-moisture-of-mix",
        "Moisture of a mix",
        $"G = ({Sum(n, i => $"Q{i} × M{i}")}) / ({Sum(n, i => $"Q{i}")})",
        Moisture,
        [
            .. Each<MoistFeedstock>(n, i =>
            [
                new(new Symbol($"Q{i}", $"{Ordinal(i)} feedstock, wet", "lb", i == 1 ? 0.001 : 0), x => x[i - 1].Wet.Pounds),
                new(new Symbol($"M{i}", "its moisture", "%", 0, 100), x => x[i - 1].Moisture.Percent),
            ]),
        ],
        new(new Symbol("G", "moisture of the mix", "%"), y => y.Percent),
        v => [.. Enumerable.Range(0, n).Select(i => new MoistFeedstock(Mass.FromPounds(v[2 * i]), MassShare.FromPercent(v[(2 * i) + 1])))],
        x => MassShare.FromFraction(x.Sum(f => f.Wet.Kilograms * f.Moisture.Fraction) / x.Sum(f => f.Wet.Kilograms))));

    /// <summary>Carbon to nitrogen ratio of a mix of two to twelve feedstocks.</summary>
    public static SeriesFormula<Feedstock, Coefficient> CarbonToNitrogenOfMix { get; } = new(2, MostFeedstocks, n => new(
        "compost-carbon-to-nitrogen-of-mix",
        "Carbon to nitrogen ratio of a mix",
        $"R = ({Sum(n, i => $"Q{i} × C{i} × (100 − M{i})")}) / ({Sum(n, i => $"Q{i} × N{i} × (100 − M{i})")})",
        CarbonAndNitrogen,
        [
            .. Each<Feedstock>(n, i =>
            [
                new(new Symbol($"Q{i}", $"{Ordinal(i)} feedstock, wet", "lb", i == 1 ? 0.001 : 0), x => x[i - 1].Wet.Pounds),
                new(new Symbol($"C{i}", "its carbon, of dry matter", "%", 0, 100), x => x[i - 1].Carbon.Percent),
                new(new Symbol($"N{i}", "its nitrogen, of dry matter", "%", i == 1 ? 0.001 : 0, 100), x => x[i - 1].Nitrogen.Percent),
                new(new Symbol($"M{i}", "its moisture", "%", 0, i == 1 ? 99.9 : 100), x => x[i - 1].Moisture.Percent),
            ]),
        ],
        new(new Symbol("R", "carbon to nitrogen ratio", ""), y => y.Value),
        v => [.. Enumerable.Range(0, n).Select(i => new Feedstock(Mass.FromPounds(v[4 * i]), MassShare.FromPercent(v[(4 * i) + 1]), MassShare.FromPercent(v[(4 * i) + 2]), MassShare.FromPercent(v[(4 * i) + 3])))],
        x => new Coefficient(x.Sum(f => f.DryKilograms * f.Carbon.Fraction) / x.Sum(f => f.DryKilograms * f.Nitrogen.Fraction))));

    /// <summary>How much of a second feedstock brings a mix to a wanted moisture, which must lie between the two.</summary>
    public static Formula<(MoistFeedstock First, MassShare SecondMoisture, MassShare Wanted), Mass> SecondForMoisture { get; } = new(
        "compost-second-for-moisture",
        "Second feedstock for a wanted moisture",
        "Q2 = Q1 × (G − M1) / (M2 − G)",
        Moisture,
        [
            new(new Symbol("Q1", "first feedstock, wet", "lb", 0.001), x => x.First.Wet.Pounds),
            new(new Symbol("G", "moisture wanted", "%", 0, 100), x => x.Wanted.Percent),
            new(new Symbol("M1", "moisture of the first", "%", 0, 100), x => x.First.Moisture.Percent),
            new(new Symbol("M2", "moisture of the second", "%", 0, 100), x => x.SecondMoisture.Percent),
        ],
        new(new Symbol("Q2", "second feedstock, wet", "lb"), y => y.Pounds),
        v => (new MoistFeedstock(Mass.FromPounds(v[0]), MassShare.FromPercent(v[2])), MassShare.FromPercent(v[3]), MassShare.FromPercent(v[1])),
        x => Second(x.First.Wet, x.Wanted.Fraction - x.First.Moisture.Fraction, x.SecondMoisture.Fraction - x.Wanted.Fraction));

    /// <summary>How much of a second feedstock brings a mix to a wanted carbon to nitrogen ratio, which must lie between the two.</summary>
    public static Formula<(Feedstock First, Feedstock OneUnitOfSecond, Coefficient Wanted), Mass> SecondForCarbonToNitrogen { get; } = new(
        "compost-second-for-carbon-to-nitrogen",
        "Second feedstock for a wanted carbon to nitrogen ratio",
        "Q2 = Q1 × (R × N1 − C1) × (100 − M1) / ((C2 − R × N2) × (100 − M2))",
        CarbonAndNitrogen,
        [
            new(new Symbol("Q1", "first feedstock, wet", "lb", 0.001), x => x.First.Wet.Pounds),
            new(new Symbol("R", "carbon to nitrogen ratio wanted, a heap starts well from 25 to 40", "", 10, 60), x => x.Wanted.Value),
            new(new Symbol("N1", "nitrogen of the first, of dry matter", "%", 0.02, 16), x => x.First.Nitrogen.Percent),
            new(new Symbol("C1", "carbon of the first, of dry matter", "%", 5, 65), x => x.First.Carbon.Percent),
            new(new Symbol("M1", "moisture of the first", "%", 0, 99.9), x => x.First.Moisture.Percent),
            new(new Symbol("C2", "carbon of the second, of dry matter", "%", 5, 65), x => x.OneUnitOfSecond.Carbon.Percent),
            new(new Symbol("N2", "nitrogen of the second, of dry matter", "%", 0.02, 16), x => x.OneUnitOfSecond.Nitrogen.Percent),
            new(new Symbol("M2", "moisture of the second", "%", 0, 99.9), x => x.OneUnitOfSecond.Moisture.Percent),
        ],
        new(new Symbol("Q2", "second feedstock, wet", "lb"), y => y.Pounds),
        v => (
            new Feedstock(Mass.FromPounds(v[0]), MassShare.FromPercent(v[3]), MassShare.FromPercent(v[2]), MassShare.FromPercent(v[4])),
            new Feedstock(Mass.FromPounds(1), MassShare.FromPercent(v[5]), MassShare.FromPercent(v[6]), MassShare.FromPercent(v[7])),
            new Coefficient(v[1])),
        x => Second(
            x.First.Wet,
            ((x.Wanted.Value * x.First.Nitrogen.Fraction) - x.First.Carbon.Fraction) * (1 - x.First.Moisture.Fraction),
            (x.OneUnitOfSecond.Carbon.Fraction - (x.Wanted.Value * x.OneUnitOfSecond.Nitrogen.Fraction)) * (1 - x.OneUnitOfSecond.Moisture.Fraction)),
        "The publication prints the balance in symbols; no worked example of it was read. It is held against the ratio of the mix.");

    /// <summary>Carbon of a feedstock from its nitrogen and its ratio.</summary>
    public static Formula<(MassShare Nitrogen, Coefficient Ratio), MassShare> CarbonOfRatio { get; } = new(
        "compost-carbon-of-ratio",
        "Carbon of a feedstock, from its nitrogen and its ratio",
        "C = N × R",
        CarbonAndNitrogen,
        [
            new(new Symbol("N", "nitrogen, of dry matter", "%", 0, 100), x => x.Nitrogen.Percent),
            new(new Symbol("R", "carbon to nitrogen ratio", "", 0, 1000), x => x.Ratio.Value),
        ],
        new(new Symbol("C", "carbon, of dry matter", "%"), y => y.Percent),
        v => (MassShare.FromPercent(v[0]), new Coefficient(v[1])),
        x => MassShare.FromFraction(x.Nitrogen.Fraction * x.Ratio.Value),
        "The definition of the ratio; the publication prints it without an example.");

    /// <summary>Moisture of a sample, weighed before and after drying.</summary>
    public static Formula<(Mass Wet, Mass Dry), MassShare> MoistureByDrying { get; } = new(
        "moisture-by-drying",
        "Moisture of a sample, weighed wet and dry",
        "M = (W − D) / W × 100",
        Moisture,
        [
            new(new Symbol("W", "weight before drying", "g", 0.001), x => x.Wet.Grams),
            new(new Symbol("D", "weight once it loses no more", "g", 0), x => x.Dry.Grams),
        ],
        new(new Symbol("M", "moisture", "%"), y => y.Percent),
        v => v[1] > v[0]
            ? throw new ArgumentOutOfRangeException(nameof(v), "Drying adds no weight.")
            : (Mass.FromGrams(v[0]), Mass.FromGrams(v[1])),
        x => MassShare.FromFraction((x.Wet - x.Dry) / x.Wet));

    private static Mass Second(Mass first, double lacking, double perUnitOfSecond)
    {
        var second = lacking / perUnitOfSecond;
        return second >= 0 && double.IsFinite(second)
            ? first * second
            : throw new ArgumentOutOfRangeException(nameof(lacking), "What is wanted must lie between the two feedstocks.");
    }

    private static IEnumerable<FormulaInput<IReadOnlyList<T>>> Each<T>(int members, Func<int, FormulaInput<IReadOnlyList<T>>[]> of) =>
        Enumerable.Range(1, members).SelectMany(of);

    private static string Sum(int members, Func<int, string> term) => string.Join(" + ", Enumerable.Range(1, members).Select(term));

    private static string Ordinal(int number) => number switch
    {
        1 => "first",
        2 => "second",
        3 => "third",
        _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{number}th"),
    };
}
