namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// Lime counted as already corrected for purity and fineness: what would work like as much pure, fine calcium carbonate. Never divided by a
/// neutralising value again: that takes <see cref="CalciumCarbonate"/> and does not compile.
/// </summary>
public readonly struct EffectiveLime : IForm
{
    /// <inheritdoc/>
    public static string Symbol => "effective lime";
}
