using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>No cell begins or ends with a blank: two words that look alike must be alike.</summary>
internal sealed class SurroundingBlankCheck : ITableCheck
{
    public string Code => "surrounding-blank";

    public IEnumerable<TableProblem> Check(TableFolder folder) => TableCell.Of(folder)
        .Where(cell => cell.Text is { } text && (char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1])))
        .Select(cell => cell.Fault(Code, $"\"{cell.Text}\" begins or ends with a blank. Remove it."));
}
