using UnitsNet;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>Layer that was sampled.</summary>
/// <param name="From">Top of the layer.</param>
/// <param name="To">Bottom of the layer; below the top.</param>
public sealed record SampleDepth(Length From, Length To);
