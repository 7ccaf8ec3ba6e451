using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>Something that a reader opens when they ask for it. Where nothing folds it stands open under its title.</summary>
internal sealed record Fold(string Title, int Level, IReadOnlyList<Block> Blocks) : Block
{
    public override IEnumerable<Citation> Citations => Blocks.SelectMany(b => b.Citations);
}
