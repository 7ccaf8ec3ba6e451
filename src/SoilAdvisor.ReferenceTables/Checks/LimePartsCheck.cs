using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>An equation names its formula and has what the formula asks for; a table has cells and no formula; a method known only to the laboratory has neither.</summary>
internal sealed class LimePartsCheck : ITableCheck
{
    private static readonly RowKind[] Parts = [RowKinds.LimeParameters, RowKinds.LimeEquations, RowKinds.LimeCells];

    public string Code => "lime-parts";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.LimeMethods.SelectMany(d => Faults(d, folder));

    private IEnumerable<TableProblem> Faults(Document<LimeMethodDocument> document, TableFolder folder)
    {
        var needed = document.Value.Kind switch
        {
            LimeMethodDocument.Equation => RowKinds.LimeParameters,
            LimeMethodDocument.TargetEquations => RowKinds.LimeEquations,
            LimeMethodDocument.Table => RowKinds.LimeCells,
            _ => null,
        };
        var isEquation = needed is not null && needed != RowKinds.LimeCells;
        if (isEquation == string.IsNullOrWhiteSpace(document.Value.Formula))
        {
            yield return document.At("formula", Code, isEquation ? "An equation names its formula in the catalogue; none is named." : "A table of cells has no formula; write null.");
        }
        if (needed is not null && folder.TableIn(document.Folder, needed) is var table)
        {
            if (table is null)
            {
                if (!folder.IsUnread(needed))
                {
                    yield return document.At("kind", Code, $"This kind of method needs {needed.FileName}.csv beside it.");
                }
            }
            else if (LimeByEquation.ParametersOf(document.Value.Formula ?? "").Except(table.Rows.Select(r => r["symbol"]).OfType<string>()).ToList() is { Count: > 0 } missing && needed == RowKinds.LimeParameters)
            {
                yield return document.At("formula", Code, $"The formula {document.Value.Formula} lacks {string.Join(", ", missing)} in {needed.FileName}.csv.");
            }
        }
        foreach (var foreign in Parts.Where(p => p != needed && folder.TableIn(document.Folder, p) is not null))
        {
            yield return document.At("kind", Code, $"This kind of method has no {foreign.FileName}.csv; nothing would read it.");
        }
    }
}
