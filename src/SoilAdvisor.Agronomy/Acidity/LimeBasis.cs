using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>What a printed lime rate counts. It turns the printed number into a <see cref="LimeAmount"/> once, here and nowhere else.</summary>
public abstract record LimeBasis
{
    // Calcium oxide and Missouri's calcium become calcium carbonate by their molar masses.
    private const double CarbonateInOxide = 100.09 / 56.08;
    private const double CarbonateInCalcium = 2.5;

    // The middle of the grade 60-69: our reading.
    private const double WisconsinGrade = 0.65;

    private static readonly (string[] Synonyms, LimeBasis Basis)[] Known =
    [
        (["cce", "pure calcium carbonate", "100 % calcium carbonate"], new CalciumCarbonateEquivalent("calcium carbonate equivalent", 1)),
        (["cao"], new CalciumCarbonateEquivalent("calcium oxide", CarbonateInOxide)),
        (["ground limestone", "ag lime", "aglime"], new GroundLimestone("agricultural limestone", null)),
        (["agricultural limestone, CCE 90"], new GroundLimestone("agricultural limestone of 90 % calcium carbonate equivalent", MassShare.FromPercent(90))),
        (["agricultural limestone, CCE 100"], new GroundLimestone("agricultural limestone of 100 % calcium carbonate equivalent", MassShare.FromPercent(100))),
        (["limestone NV 50"], new GroundLimestone("ground limestone of neutralising value 50 % calcium oxide", MassShare.FromPercent(50 * CarbonateInOxide))),
        (["lime score 100"], new EffectiveValue("100-score lime", EffectiveLimeIndex.OregonLimeScore, 1)),
        (["ecce"], new EffectiveValue("effective calcium carbonate equivalent (Iowa)", EffectiveLimeIndex.IowaEcce, 1)),
        (["ecc"], new EffectiveValue("effective calcium carbonate (Kansas)", EffectiveLimeIndex.KansasEcc, 1)),
        (["enp"], new EffectiveValue("effective neutralising power (Minnesota)", EffectiveLimeIndex.MinnesotaEnp, 1)),
        (["enp (ohio)"], new EffectiveValue("effective neutralising power (Ohio)", EffectiveLimeIndex.OhioEnp, 1)),
        (["60-69 lime"], new EffectiveValue("lime of neutralising index 60-69 (Wisconsin)", EffectiveLimeIndex.WisconsinNeutralisingIndex, WisconsinGrade)),
        (["enm"], new EffectiveValue("effective neutralising material (Missouri)", EffectiveLimeIndex.MissouriEnm, CarbonateInCalcium)),
        (["env", "100 % env lime"], new EffectiveValue("effective neutralising value (New York)", EffectiveLimeIndex.NewYorkEnv, 1)),
        (["rnv", "100 % rnv lime"], new EffectiveValue("relative neutralising value 100 % (Kentucky)", EffectiveLimeIndex.KentuckyRnv, 1)),
        ([], new EffectiveValue("reagent calcium carbonate (Georgia)", EffectiveLimeIndex.GeorgiaReagent, 1)),
        ([], new EffectiveValue("effective lime", EffectiveLimeIndex.NotNamed, 1)),
    ];

    private LimeBasis(string words) => Words = words;

    /// <summary>Counted as pure calcium carbonate.</summary>
    public static LimeBasis Pure => Known[0].Basis;

    /// <summary>The basis in words: its id.</summary>
    public string Words { get; }

    /// <summary>The bases that can be written.</summary>
    public static IReadOnlyList<string> Ids { get; } = [.. Known.Select(k => k.Basis.Words)];

    /// <summary>Reads what a rate counts, in any case; refuses anything else.</summary>
    /// <param name="text">As printed or written.</param>
    public static Answer<LimeBasis> Read(string text)
    {
        var found = Known.FirstOrDefault(k => k.Synonyms.Prepend(k.Basis.Words).Contains(text.Trim(), StringComparer.OrdinalIgnoreCase)).Basis;
        return found is not null
            ? Answer<LimeBasis>.Given(found)
            : Answer<LimeBasis>.Refused(
                "lime-basis-unknown",
                $"The lime rate counts \"{(text.Length > 64 ? text[..64] + "…" : text)}\", which is not known here.",
                $"Ask the laboratory for the rate as one of: {string.Join("; ", Ids)}.");
    }

    /// <summary>The printed number as an amount of lime.</summary>
    /// <param name="printed">The rate as printed.</param>
    public abstract LimeAmount Of(MassPerArea printed);

    /// <summary>Calcium carbonate equivalent, or an oxide that is turned into it.</summary>
    /// <param name="Words">In words.</param>
    /// <param name="Factor">Calcium carbonate for one unit of what is counted: 1, or 1.785 for calcium oxide.</param>
    public sealed record CalciumCarbonateEquivalent(string Words, double Factor) : LimeBasis(Words)
    {
        /// <inheritdoc/>
        public override LimeAmount Of(MassPerArea printed) => new LimeAmount.NeutralisingValue(new Rate<CalciumCarbonate>(printed * Factor));
    }

    /// <summary>Ground agricultural limestone as a product, which is not pure.</summary>
    /// <param name="Words">In words.</param>
    /// <param name="StatedNeutralisingValue">Its calcium carbonate equivalent; null where the publication does not print it: then it is taken as pure, and that is said.</param>
    public sealed record GroundLimestone(string Words, MassShare? StatedNeutralisingValue) : LimeBasis(Words)
    {
        /// <inheritdoc/>
        public override LimeAmount Of(MassPerArea printed) => new LimeAmount.NeutralisingValue(new Rate<CalciumCarbonate>(printed * (StatedNeutralisingValue?.Fraction ?? 1)));
    }

    /// <summary>Lime already corrected for purity and fineness.</summary>
    /// <param name="Words">In words.</param>
    /// <param name="Index">By which rule.</param>
    /// <param name="Score">Effective value of the lime that is counted, as a fraction: 1 for 100-score lime, 0.65 for the grade 60-69.</param>
    public sealed record EffectiveValue(string Words, EffectiveLimeIndex Index, double Score) : LimeBasis(Words)
    {
        /// <inheritdoc/>
        public override LimeAmount Of(MassPerArea printed) => new LimeAmount.Effective(new Rate<EffectiveLime>(printed * Score), Index);
    }
}
