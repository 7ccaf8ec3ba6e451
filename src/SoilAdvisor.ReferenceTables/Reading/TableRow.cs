namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>One data row. An empty cell is null: not known, never zero.</summary>
internal sealed class TableRow(Table table, int line, string[] cells)
{
    public Table Table => table;

    public int Line => line;

    /// <summary>The cell as written; null when it is empty or the kind has no such column.</summary>
    public string? this[string column] => table.IndexOf(column) is var i and >= 0 && i < cells.Length && cells[i].Length > 0 ? cells[i] : null;

    /// <summary>The number of a cell; null when it is empty or not a plain decimal number.</summary>
    public decimal? Number(string column) => TryNumber(this[column], out var number) ? number : null;

    /// <summary>The parts of a cell that holds several, joined by semicolons.</summary>
    public string[] Parts(string column) => this[column]?.Split(';') ?? [];

    /// <summary>The cell, which the checks have found to be filled.</summary>
    public string Needed(string column) => this[column] ?? throw new InvalidOperationException(At(column, "unchecked", "An empty cell was let through.").ToString());

    /// <summary>The number, which the checks have found to be there.</summary>
    public decimal NeededNumber(string column) => Number(column) ?? throw new InvalidOperationException(At(column, "unchecked", "A cell without a number was let through.").ToString());

    public TableProblem At(string? column, string code, string words) => new(table.Path, line, column, code, words);

    public static bool TryNumber(string? text, out decimal number) =>
        decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
}
