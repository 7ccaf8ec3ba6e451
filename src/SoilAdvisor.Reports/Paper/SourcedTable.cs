using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>A table; the writers add the column of sources.</summary>
internal sealed record SourcedTable(IReadOnlyList<string> Columns, IReadOnlyList<SourcedRow> Rows) : Block
{
    public const string SourceColumn = "Source";

    public override IEnumerable<Citation> Citations => Rows.SelectMany(r => r.Sources);
}
