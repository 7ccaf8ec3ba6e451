using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>A rate of lime split into spreadings.</summary>
/// <param name="Each">The doses in order.</param>
/// <param name="Limit">The published limit that was used; null where the material's own largest rate was smaller.</param>
/// <param name="Said">The limit in one sentence.</param>
/// <param name="Source">Where the limit stands.</param>
public sealed record LimeDoses(IReadOnlyList<LimeDose> Each, DoseLimit? Limit, string Said, Citation Source);
