using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The target pH of a bed and what was assumed in choosing it.</summary>
/// <param name="Target">The target.</param>
/// <param name="Assumptions">Conflicts between crops, and which end of a range was taken.</param>
public sealed record TargetPhAnswer(TargetPh Target, IReadOnlyList<Assumption> Assumptions);
