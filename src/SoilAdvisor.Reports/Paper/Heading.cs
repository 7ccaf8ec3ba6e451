using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>A heading. The anchor is ours (never user text); null for none.</summary>
internal sealed record Heading(int Level, string Text, string? Anchor = null) : Block
{
    public override IEnumerable<Citation> Citations => [];
}
