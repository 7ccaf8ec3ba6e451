using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>One row of a table. It cannot be made without a source.</summary>
internal sealed record SourcedRow
{
    public SourcedRow(IReadOnlyList<Cell> cells, IEnumerable<Citation> sources)
    {
        Cells = cells;
        Sources = [.. sources.Distinct()];
        if (Sources.Count == 0)
        {
            throw new ArgumentException("A row of numbers needs a source.", nameof(sources));
        }
    }

    /// <summary>One cell a column.</summary>
    public IReadOnlyList<Cell> Cells { get; }

    /// <summary>Where its numbers stand.</summary>
    public IReadOnlyList<Citation> Sources { get; }
}
