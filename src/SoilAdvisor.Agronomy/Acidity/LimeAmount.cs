using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// How much lime, with what it counts: neutralising value, or effective lime. There is no third, and no way to read the one as the other, so
/// that a rate already in effective lime cannot be divided by the neutralising value of a stone. Zero in either is no lime.
/// </summary>
public abstract record LimeAmount
{
    private LimeAmount()
    {
    }

    /// <summary>No lime.</summary>
    public static LimeAmount None { get; } = new NeutralisingValue(default(Rate<CalciumCarbonate>));

    /// <summary>Weight of pure, fine calcium carbonate that would do it: what all materials together may bring, never a rate of stone.</summary>
    public abstract MassPerArea AsPureLime { get; }

    /// <summary>True when no lime is needed.</summary>
    public bool IsZero => AsPureLime <= default(MassPerArea);

    /// <summary>A multiple of it on the same count.</summary>
    /// <param name="factor">Pure number, not negative.</param>
    public abstract LimeAmount Times(Coefficient factor);

    /// <summary>What is left after some pure calcium carbonate was spread; never below none.</summary>
    /// <param name="spread">Spread, counted as pure calcium carbonate.</param>
    public abstract LimeAmount Less(MassPerArea spread);

    /// <summary>Counted as calcium carbonate equivalent: a stone is corrected by its neutralising value, and the state's fineness is taken for granted.</summary>
    /// <param name="Rate">Pure calcium carbonate.</param>
    public sealed record NeutralisingValue(Rate<CalciumCarbonate> Rate) : LimeAmount
    {
        /// <inheritdoc/>
        public override MassPerArea AsPureLime => Rate.Amount;

        /// <inheritdoc/>
        public override LimeAmount Times(Coefficient factor) => new NeutralisingValue(Rate * factor.Value);

        /// <inheritdoc/>
        public override LimeAmount Less(MassPerArea spread) => new NeutralisingValue(new Rate<CalciumCarbonate>(MassPerArea.Larger(Rate.Amount - spread, default)));
    }

    /// <summary>Counted as effective lime: a stone is corrected by its effective value on the same index, which holds its neutralising value already.</summary>
    /// <param name="Rate">Lime of effective value 100 %.</param>
    /// <param name="Index">The rule that counts it.</param>
    public sealed record Effective(Rate<EffectiveLime> Rate, EffectiveLimeIndex Index) : LimeAmount
    {
        /// <inheritdoc/>
        public override MassPerArea AsPureLime => Rate.Amount;

        /// <inheritdoc/>
        public override LimeAmount Times(Coefficient factor) => new Effective(Rate * factor.Value, Index);

        /// <inheritdoc/>
        public override LimeAmount Less(MassPerArea spread) => new Effective(new Rate<EffectiveLime>(MassPerArea.Larger(Rate.Amount - spread, default)), Index);
    }
}
