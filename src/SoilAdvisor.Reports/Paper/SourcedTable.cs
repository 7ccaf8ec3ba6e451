using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>A table; the writers add the column of sources. The key column holds what the reader acts on and stands out.</summary>
internal sealed record SourcedTable(IReadOnlyList<string> Columns, IReadOnlyList<SourcedRow> Rows, int? KeyColumn = null) : Block
{
    public const string SourceColumn = "Source";

    public override IEnumerable<Citation> Citations => Rows.SelectMany(r => r.Sources);
}
