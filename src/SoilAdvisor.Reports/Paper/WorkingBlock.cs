using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>One line of working.</summary>
internal sealed record WorkingBlock(WorkingLine Line) : Block
{
    public override IEnumerable<Citation> Citations =>
        Line.Inputs.Select(i => i.From).OfType<Origin.CitedFrom>().Select(f => f.Source).Prepend(Line.Source);
}
