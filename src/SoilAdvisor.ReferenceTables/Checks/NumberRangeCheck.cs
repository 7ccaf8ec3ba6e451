using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A number lies between the declared lowest and highest.</summary>
internal sealed class NumberRangeCheck : ITableCheck
{
    public string Code => "number-range";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from cell in TableCell.Of(folder)
        where (cell.Declared.Min is not null || cell.Declared.Max is not null) && cell.Text is not null
        let number = cell.Row.Number(cell.Column)
        where number < cell.Declared.Min || number > cell.Declared.Max
        select cell.Fault(Code, $"{cell.Text} is out of range: {Limits(cell.Declared)}.");

    private static string Limits(ColumnSpecification column) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(column.Min is { } min ? $"at least {min}" : "")}{(column is { Min: not null, Max: not null } ? ", " : "")}{(column.Max is { } max ? $"at most {max}" : "")}{(column.Unit is null ? "" : $" ({column.Unit})")}");
}
