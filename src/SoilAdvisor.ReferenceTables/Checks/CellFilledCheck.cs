using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A cell is empty only in an optional column.</summary>
internal sealed class CellFilledCheck : ITableCheck
{
    public string Code => "cell-filled";

    public IEnumerable<TableProblem> Check(TableFolder folder) => TableCell.Of(folder)
        .Where(cell => cell.Text is null && !cell.Declared.Optional)
        .Select(cell => cell.Fault(Code, "The cell is empty. Fill it; leave a cell empty only where the document says the column is optional."));
}
