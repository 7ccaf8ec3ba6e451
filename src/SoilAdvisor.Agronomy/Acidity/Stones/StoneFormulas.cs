using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using Quality = (SoilAdvisor.Agronomy.Quantities.MassShare NeutralisingValue, SoilAdvisor.Agronomy.Acidity.Stones.Fineness Fineness);
using QualityWithWater = (SoilAdvisor.Agronomy.Quantities.MassShare NeutralisingValue, SoilAdvisor.Agronomy.Acidity.Stones.Fineness Fineness, SoilAdvisor.Agronomy.Quantities.MassShare Moisture);

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>
/// What a stone is worth by each state's index, and how much of it carries a requirement. Neutralising values above 100 % are not capped;
/// water counts only where the state counts it. Tons are short tons of 2000 lb.
/// </summary>
public static class StoneFormulas
{
    private const double PoundsInShortTon = 2000;

    // 40 % calcium in pure limestone: Missouri counts pounds of it in a short ton.
    private const double MissouriWhole = 800;

    private const string NoExample = "The publication prints the rule without a worked example that was read.";

    private const string Recalled = "The rule is recalled; no publication with it was read.";

    /// <summary>Iowa, effective calcium carbonate equivalent.</summary>
    public static Formula<QualityWithWater, MassShare> EcceIowa { get; } =
        Wet("lime-ecce-iowa", "Effective calcium carbonate equivalent, Iowa", "ECCE", new Citation("iowa-pm1688", null, Evidence.Seen), null);

    /// <summary>Ohio and Minnesota, effective neutralizing power.</summary>
    public static Formula<QualityWithWater, MassShare> Enp { get; } =
        Wet("lime-enp", "Effective neutralizing power, Ohio and Minnesota", "ENP", new Citation("mda-enp", null, Evidence.Seen), NoExample);

    /// <summary>Missouri, effective neutralizing material: pounds of calcium that act, so that pure stone is 800 lb/ton.</summary>
    public static Formula<Quality, MassShare> EnmMissouri { get; } = new(
        "lime-enm-missouri",
        "Effective neutralizing material, Missouri",
        "ENM = CCE / 100 × F / 100 × 800",
        new Citation("mo-pfcs", null, Evidence.Seen),
        Inputs(),
        new(new Symbol("ENM", "effective neutralizing material in a short ton", "lb/ton"), y => y.PoundsPerShortTon),
        v => (MassShare.FromPercent(v[0]), Fineness.FromPercent(v[1])),
        x => MassShare.FromPoundsPerShortTon(x.NeutralisingValue.Percent / 100 * x.Fineness.Percent / 100 * MissouriWhole),
        NoExample);

    /// <summary>New York, effective neutralizing value.</summary>
    public static Formula<Quality, MassShare> EnvNewYork { get; } =
        Dry("lime-env-new-york", "Effective neutralizing value, New York", "ENV", new Citation("cornell-cca", null, Evidence.Seen), NoExample);

    /// <summary>Mississippi and Kentucky, relative neutralizing value.</summary>
    public static Formula<Quality, MassShare> Rnv { get; } =
        Dry("lime-rnv", "Relative neutralizing value, Mississippi and Kentucky", "RNV", new Citation("ms-rule", null, Evidence.Seen), NoExample);

    /// <summary>British Columbia, by the fineness of the Ohio method.</summary>
    public static Formula<Quality, MassShare> EffectiveBritishColumbia { get; } =
        Dry("lime-effective-british-columbia", "Effective value, British Columbia", "EV", new Citation("bc-637", null, Evidence.Seen), "The page works the fineness only; that has its own check.");

    /// <summary>Oklahoma, effective calcium carbonate equivalent.</summary>
    public static Formula<Quality, MassShare> EcceOklahoma { get; } =
        Dry("lime-ecce-oklahoma", "Effective calcium carbonate equivalent, Oklahoma", "ECCE", new Citation("mem-oksu", null, Evidence.FromMemory), Recalled);

    /// <summary>Kansas, effective calcium carbonate.</summary>
    public static Formula<Quality, MassShare> EccKansas { get; } =
        Dry("lime-ecc-kansas", "Effective calcium carbonate, Kansas", "ECC", new Citation("mem-ksu-mf2586", null, Evidence.FromMemory), Recalled);

    /// <summary>Stone for a requirement in effective lime: its score is taken once, and its neutralising value is not taken again.</summary>
    public static Formula<(MassPerArea Requirement, MassShare Effective), MassPerArea> ByEffectiveValue { get; } = new(
        "lime-stone-by-effective-value",
        "Stone for a requirement in effective lime",
        "S = LR × 2000 / E",
        new Citation("osu-ocj2014", null, Evidence.Seen),
        [
            new(new Symbol("LR", "lime requirement as effective lime", "lb/acre", 0), x => x.Requirement.PoundsPerAcre),
            new(new Symbol("E", "effective lime in a short ton of the stone", "lb/ton", 1, 4000), x => x.Effective.PoundsPerShortTon),
        ],
        new(new Symbol("S", "stone", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPoundsPerShortTon(v[1])),
        x => x.Requirement * (1 / x.Effective.Fraction),
        "The column prints the rule; no worked example was read.");

    /// <summary>Stone for a requirement in Missouri's effective neutralizing material.</summary>
    public static Formula<(MassPerArea Needed, MassShare Enm), MassPerArea> ByEnmMissouri { get; } = new(
        "lime-stone-missouri",
        "Stone for a requirement in effective neutralizing material, Missouri",
        "S = N / ENM",
        new Citation("mo-miller", null, Evidence.Seen),
        [
            new(new Symbol("N", "effective neutralizing material needed", "lb/acre", 0), x => x.Needed.PoundsPerAcre),
            new(new Symbol("ENM", "effective neutralizing material in a short ton of the stone", "lb/ton", 1, 2000), x => x.Enm.PoundsPerShortTon),
        ],
        new(new Symbol("S", "stone", "ton/acre"), y => y.PoundsPerAcre / PoundsInShortTon),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPoundsPerShortTon(v[1])),
        x => x.Needed * (1 / x.Enm.Fraction));

    /// <summary>Stone for a requirement in agricultural lime of a stated neutralising value (Tri-State prints 90 %).</summary>
    public static Formula<(MassPerArea Requirement, MassShare Stated, MassShare NeutralisingValue), MassPerArea> ByStatedValue { get; } = new(
        "lime-stone-by-stated-value",
        "Stone for a requirement in lime of a stated neutralising value",
        "S = LR × B / NV",
        new Citation("tristate-1995", null, Evidence.Seen),
        [
            new(new Symbol("LR", "lime requirement as lime of the stated value", "lb/acre", 0), x => x.Requirement.PoundsPerAcre),
            new(new Symbol("B", "neutralising value that the rate is printed for", "% CaCO3 equivalent", 1, 200), x => x.Stated.Percent),
            new(new Symbol("NV", "neutralising value of the stone", "% CaCO3 equivalent", 1, 200), x => x.NeutralisingValue.Percent),
        ],
        new(new Symbol("S", "stone", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), MassShare.FromPercent(v[1]), MassShare.FromPercent(v[2])),
        x => x.Requirement * (x.Stated.Fraction / x.NeutralisingValue.Fraction),
        "The bulletin prints the rule; no worked example was read.");

    private static FormulaInput<Quality>[] Inputs() =>
    [
        new(NeutralisingValue, x => x.NeutralisingValue.Percent),
        new(FinenessPercent, x => x.Fineness.Percent),
    ];

    private static Symbol NeutralisingValue => new("CCE", "neutralising value of the stone", "% CaCO3 equivalent", 0, 300);

    private static Symbol FinenessPercent => new("F", "fineness", "%", 0, 100);

    private static Formula<Quality, MassShare> Dry(string id, string title, string symbol, Citation source, string whyUnchecked) => new(
        id,
        title,
        $"{symbol} = CCE / 100 × F",
        source,
        Inputs(),
        new(new Symbol(symbol, "effective part of the stone", "%"), y => y.Percent),
        v => (MassShare.FromPercent(v[0]), Fineness.FromPercent(v[1])),
        x => MassShare.FromPercent(x.NeutralisingValue.Percent / 100 * x.Fineness.Percent),
        whyUnchecked);

    private static Formula<QualityWithWater, MassShare> Wet(string id, string title, string symbol, Citation source, string? whyUnchecked) => new(
        id,
        title,
        $"{symbol} = F / 100 × CCE / 100 × (100 − m) / 100 × 2000",
        source,
        [
            new(NeutralisingValue, x => x.NeutralisingValue.Percent),
            new(FinenessPercent, x => x.Fineness.Percent),
            new(new Symbol("m", "water in the stone", "%", 0, 99), x => x.Moisture.Percent),
        ],
        new(new Symbol(symbol, "effective lime in a short ton", "lb/ton"), y => y.PoundsPerShortTon),
        v => (MassShare.FromPercent(v[0]), Fineness.FromPercent(v[1]), MassShare.FromPercent(v[2])),
        x => MassShare.FromFraction(x.Fineness.Percent / 100 * x.NeutralisingValue.Percent / 100 * (100 - x.Moisture.Percent) / 100),
        whyUnchecked);
}
