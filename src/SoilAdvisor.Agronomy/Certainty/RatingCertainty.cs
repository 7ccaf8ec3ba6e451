using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>How sure a rating is.</summary>
/// <param name="Classes">Every class of the scale with its probability, low to high; probabilities sum to 1.</param>
/// <param name="Spread">Spread of the result that they rest on.</param>
/// <param name="Words">In words for a reader, for example "probably Low (62 %)".</param>
/// <param name="Assumptions">What they rest on.</param>
public sealed record RatingCertainty(
    IReadOnlyList<ClassProbability> Classes,
    ResultSpread Spread,
    string Words,
    IReadOnlyList<Assumption> Assumptions);
