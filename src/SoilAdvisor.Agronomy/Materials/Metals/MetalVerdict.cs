using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials.Metals;

/// <summary>What the metals of a tested material allow.</summary>
/// <param name="Findings">One for each metal that a limit was held against, and one where no rule was named.</param>
/// <param name="Caps">Largest rates that limits on the load allow; empty for none.</param>
/// <param name="Working">The arithmetic.</param>
public sealed record MetalVerdict(IReadOnlyList<MaterialTestFinding> Findings, IReadOnlyList<RateCap> Caps, IReadOnlyList<WorkingLine> Working)
{
    /// <summary>Nothing tested, nothing said.</summary>
    public static MetalVerdict None { get; } = new([], [], []);

    /// <summary>True when a metal lies above a ceiling.</summary>
    public bool Forbids => Findings.Any(f => f.Forbids);
}
