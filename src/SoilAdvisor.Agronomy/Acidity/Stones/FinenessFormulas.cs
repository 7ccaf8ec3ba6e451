using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>How each state counts the grind. Those that start from what passes a sieve and those that start from size classes take different types.</summary>
public static class FinenessFormulas
{
    private const string NoExample = "The publication prints the rule without a worked example that was read.";

    /// <summary>Iowa: from what passes sieves 4, 8 and 60.</summary>
    public static Formula<(PassingShare P4, PassingShare P8, PassingShare P60), Fineness> Iowa { get; } = new(
        "lime-fineness-iowa",
        "Fineness of a stone, Iowa",
        "F = 0.1 × p4 + 0.3 × p8 + 0.6 × p60",
        new Citation("iowa-pm1688", null, Evidence.Seen),
        [
            new(Passing("p4", 4), x => x.P4.Percent),
            new(Passing("p8", 8), x => x.P8.Percent),
            new(Passing("p60", 60), x => x.P60.Percent),
        ],
        Result(),
        v => (PassingShare.FromPercent(v[0]), PassingShare.FromPercent(v[1]), PassingShare.FromPercent(v[2])),
        x => Fineness.FromPercent((0.1 * x.P4.Percent) + (0.3 * x.P8.Percent) + (0.6 * x.P60.Percent)));

    /// <summary>Missouri: from size classes at sieves 8, 40 and 60; what stays on sieve 8 counts nothing.</summary>
    public static Formula<(SieveClassShare C8To40, SieveClassShare C40To60, SieveClassShare Finest), Fineness> Missouri { get; } = new(
        "lime-fineness-missouri",
        "Fineness of a stone, Missouri",
        "F = 0.25 × c8-40 + 0.60 × c40-60 + 1.00 × c60",
        new Citation("mo-pfcs", null, Evidence.Seen),
        [
            new(Class("c8-40", "between sieves 8 and 40"), x => x.C8To40.Percent),
            new(Class("c40-60", "between sieves 40 and 60"), x => x.C40To60.Percent),
            new(Class("c60", "finer than sieve 60"), x => x.Finest.Percent),
        ],
        Result(),
        v => (SieveClassShare.FromPercent(v[0]), SieveClassShare.FromPercent(v[1]), SieveClassShare.FromPercent(v[2])),
        x => Fineness.FromPercent((0.25 * x.C8To40.Percent) + (0.60 * x.C40To60.Percent) + x.Finest.Percent),
        NoExample);

    /// <summary>New York: from what passes sieves 20, 60 and 100.</summary>
    public static Formula<(PassingShare P20, PassingShare P60, PassingShare P100), Fineness> NewYork { get; } = new(
        "lime-fineness-new-york",
        "Fineness of a stone, New York",
        "F = 0.40 × (p20 − p60) + 0.80 × (p60 − p100) + 1.00 × p100",
        new Citation("cornell-cca", null, Evidence.Seen),
        [
            new(Passing("p20", 20), x => x.P20.Percent),
            new(Passing("p60", 60), x => x.P60.Percent),
            new(Passing("p100", 100), x => x.P100.Percent),
        ],
        Result(),
        v => (PassingShare.FromPercent(v[0]), PassingShare.FromPercent(v[1]), PassingShare.FromPercent(v[2])),
        x => Fineness.FromPercent((0.40 * (x.P20.Percent - x.P60.Percent)) + (0.80 * (x.P60.Percent - x.P100.Percent)) + x.P100.Percent),
        NoExample);

    /// <summary>Mississippi and Kentucky: the mean of what passes sieves 10 and 50.</summary>
    public static Formula<(PassingShare P10, PassingShare P50), Fineness> Mississippi { get; } = new(
        "lime-fineness-mississippi",
        "Fineness of a stone, Mississippi and Kentucky",
        "F = (p10 + p50) / 2",
        new Citation("ms-rule", null, Evidence.Seen),
        [
            new(Passing("p10", 10), x => x.P10.Percent),
            new(Passing("p50", 50), x => x.P50.Percent),
        ],
        Result(),
        v => (PassingShare.FromPercent(v[0]), PassingShare.FromPercent(v[1])),
        x => Fineness.FromPercent((x.P10.Percent + x.P50.Percent) / 2),
        NoExample);

    /// <summary>Ohio, British Columbia and Minnesota: from size classes at sieves 8, 20 and 60; what stays on sieve 8 counts nothing.</summary>
    public static Formula<(SieveClassShare C8To20, SieveClassShare C20To60, SieveClassShare Finest), Fineness> Ohio { get; } = new(
        "lime-fineness-ohio",
        "Fineness of a stone, Ohio method",
        "F = 0.20 × c8-20 + 0.60 × c20-60 + 1.00 × c60",
        new Citation("bc-637", null, Evidence.Seen),
        [
            new(Class("c8-20", "between sieves 8 and 20"), x => x.C8To20.Percent),
            new(Class("c20-60", "between sieves 20 and 60"), x => x.C20To60.Percent),
            new(Class("c60", "finer than sieve 60"), x => x.Finest.Percent),
        ],
        Result(),
        v => (SieveClassShare.FromPercent(v[0]), SieveClassShare.FromPercent(v[1]), SieveClassShare.FromPercent(v[2])),
        x => Fineness.FromPercent((0.20 * x.C8To20.Percent) + (0.60 * x.C20To60.Percent) + x.Finest.Percent));

    /// <summary>Oklahoma: half of what passes sieve 8 and half of what passes sieve 60.</summary>
    public static Formula<(PassingShare P8, PassingShare P60), Fineness> Oklahoma { get; } = new(
        "lime-fineness-oklahoma",
        "Fineness of a stone, Oklahoma",
        "F = 0.5 × p8 + 0.5 × p60",
        new Citation("mem-oksu", null, Evidence.FromMemory),
        [
            new(Passing("p8", 8), x => x.P8.Percent),
            new(Passing("p60", 60), x => x.P60.Percent),
        ],
        Result(),
        v => (PassingShare.FromPercent(v[0]), PassingShare.FromPercent(v[1])),
        x => Fineness.FromPercent((0.5 * x.P8.Percent) + (0.5 * x.P60.Percent)),
        "The rule is recalled; no publication with it was read.");

    /// <summary>Kansas: from size classes at sieves 8 and 60; what stays on sieve 8 counts nothing.</summary>
    public static Formula<(SieveClassShare C8To60, SieveClassShare Finest), Fineness> Kansas { get; } = new(
        "lime-fineness-kansas",
        "Fineness of a stone, Kansas",
        "F = 0.5 × c8-60 + 1.0 × c60",
        new Citation("mem-ksu-mf2586", null, Evidence.FromMemory),
        [
            new(Class("c8-60", "between sieves 8 and 60"), x => x.C8To60.Percent),
            new(Class("c60", "finer than sieve 60"), x => x.Finest.Percent),
        ],
        Result(),
        v => (SieveClassShare.FromPercent(v[0]), SieveClassShare.FromPercent(v[1])),
        x => Fineness.FromPercent((0.5 * x.C8To60.Percent) + x.Finest.Percent),
        "The rule is recalled; no publication with it was read.");

    private static Symbol Passing(string symbol, int mesh) => new(symbol, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"what passes sieve {mesh}"), "%", 0, 100);

    private static Symbol Class(string symbol, string meaning) => new(symbol, meaning, "%", 0, 100);

    private static FormulaOutput<Fineness> Result() => new(new Symbol("F", "fineness", "%"), y => y.Percent);
}
