using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Rulers;

namespace SoilAdvisor.Reports.Paper;

/// <summary>The ratings of several soil tests: those on one scale stand under one ruler.</summary>
/// <param name="Scales">Lines by scale; each holds at least one, and all of one have the same limits.</param>
internal sealed record ComparisonTable(IReadOnlyList<IReadOnlyList<RatedLine>> Scales) : Block
{
    public override IEnumerable<Citation> Citations => Scales.SelectMany(s => s).SelectMany(l => l.Sources);
}
