using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A cell holds one of the words that its document declares, which may be fewer than are known.</summary>
internal sealed class DeclaredWordsCheck : ITableCheck
{
    public string Code => "one-of";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from cell in TableCell.Of(folder)
        where cell is { Text: not null, Declared.OneOf: not null } && !cell.Declared.OneOf.Contains(cell.Text)
        where cell.Kind?.Words?.Contains(cell.Text) ?? true
        select cell.Fault(Code, $"\"{cell.Text}\" is not one of the words this document declares: {string.Join(", ", cell.Declared.OneOf!)}.");
}
