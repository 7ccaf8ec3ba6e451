using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A cell is what its column says: a plain decimal number, a whole number, an id, or yes or no.</summary>
internal sealed class CellTypeCheck : ITableCheck
{
    public string Code => "cell-type";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from cell in TableCell.Of(folder)
        where cell.Text is not null
        let expected = Missed(cell.Declared.Type, cell.Text!)
        where expected is not null
        select cell.Fault(Code, $"\"{cell.Text}\" is not {expected}");

    private static string? Missed(string type, string text) => type switch
    {
        ColumnType.Number when !TableRow.TryNumber(text, out _) => "a number. Write digits with a decimal point, without thousands separators, units or signs of about.",
        ColumnType.Integer when !TableRow.TryNumber(text, out var number) || number != decimal.Truncate(number) => "a whole number.",
        ColumnType.Id when !KebabCase.IsMatch(text) => $"an id: {KebabCase.Rule}",
        ColumnType.YesNo when text is not ("yes" or "no") => "yes or no.",
        _ => null,
    };
}
