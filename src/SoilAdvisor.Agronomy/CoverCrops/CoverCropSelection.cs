using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>What fits a gap, best first, and what does not.</summary>
/// <param name="Gap">The gap.</param>
/// <param name="Choices">What fits.</param>
/// <param name="Excluded">What does not.</param>
/// <param name="Aims">What they were ranked for.</param>
/// <param name="Weights">How heavily each kind of reason counted.</param>
/// <param name="Warmth">Degree-days of the whole gap; null without temperatures.</param>
/// <param name="Termination">Federal termination guidance; null where it does not apply or was not asked.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record CoverCropSelection(
    Gap Gap,
    IReadOnlyList<CoverCropChoice> Choices,
    IReadOnlyList<CoverCropExclusion> Excluded,
    IReadOnlyList<string> Aims,
    CoverCropWeights Weights,
    DegreeDaySum? Warmth,
    TerminationGuidance? Termination,
    IReadOnlyList<Assumption> Assumptions);
