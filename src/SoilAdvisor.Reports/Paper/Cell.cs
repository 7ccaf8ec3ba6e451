namespace SoilAdvisor.Reports.Paper;

/// <summary>A cell of a table: one line or several. A line feed inside a text of the user never makes a new line.</summary>
internal readonly record struct Cell(IReadOnlyList<string> Lines)
{
    public static implicit operator Cell(string line) => new([line]);

    public static Cell Of(params IReadOnlyList<string> lines) => new(lines);
}
