using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>An equation names its formula and has coefficients; a table has cells and no formula.</summary>
internal sealed class LimePartsCheck : ITableCheck
{
    public string Code => "lime-parts";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.LimeMethods.SelectMany(d => Faults(d, folder));

    private IEnumerable<TableProblem> Faults(Document<LimeMethodDocument> document, TableFolder folder)
    {
        var isEquation = document.Value.Kind == LimeMethodDocument.Equation;
        if (isEquation == string.IsNullOrWhiteSpace(document.Value.Formula))
        {
            yield return document.At("formula", Code, isEquation ? "An equation names its formula in the catalogue; none is named." : "A table of cells has no formula; write null.");
        }
        var (needed, foreign) = isEquation ? (RowKinds.LimeParameters, RowKinds.LimeCells) : (RowKinds.LimeCells, RowKinds.LimeParameters);
        if (folder.TableIn(document.Folder, needed) is null && !folder.IsUnread(needed))
        {
            yield return document.At("kind", Code, $"This kind of method needs {needed.FileName}.csv beside it.");
        }
        if (folder.TableIn(document.Folder, foreign) is not null)
        {
            yield return document.At("kind", Code, $"This kind of method has no {foreign.FileName}.csv; nothing would read it.");
        }
    }
}
