using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>Sentences that stand together. A lead says the result of what follows.</summary>
internal sealed record Paragraph(IReadOnlyList<Sentence> Sentences, bool IsLead = false) : Block
{
    public Paragraph(params Sentence[] sentences)
        : this(sentences, false)
    {
    }

    public override IEnumerable<Citation> Citations => Sentences.SelectMany(s => s.Sources);
}
