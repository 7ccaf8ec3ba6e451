using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>A sentence with its sources.</summary>
internal sealed record Sentence(string Text, IReadOnlyList<Citation> Sources, bool Strong = false)
{
    public Sentence(string text, params Citation[] sources)
        : this(text, (IReadOnlyList<Citation>)sources)
    {
    }

    public static Sentence Bold(string text, params Citation[] sources) => new(text, sources, true);
}
