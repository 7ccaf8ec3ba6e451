namespace SoilAdvisor.Agronomy.Cations;

/// <summary>What is published about summing cations: reference-tables/cations as read.</summary>
/// <param name="Weights">Sets of milliequivalent weights; the first is used where none is named.</param>
/// <param name="Buffers">Acidity by buffer, each buffer once.</param>
/// <param name="Limits">Limits of the method.</param>
/// <param name="References">Printed ranges of saturation.</param>
/// <param name="Trials">What trials found about ratios; never empty.</param>
public sealed record CationRules(
    IReadOnlyList<MilliequivalentWeights> Weights,
    IReadOnlyList<BufferAcidityRule> Buffers,
    CationLimits Limits,
    IReadOnlyList<ReferenceSaturation> References,
    IReadOnlyList<RatioTrial> Trials);
