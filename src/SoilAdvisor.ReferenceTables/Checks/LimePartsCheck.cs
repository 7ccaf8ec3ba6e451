using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>An equation names its formula and has the coefficients that it asks for; a table has cells and no formula.</summary>
internal sealed class LimePartsCheck : ITableCheck
{
    private static readonly IReadOnlyDictionary<string, string[]> Coefficients = new Dictionary<string, string[]>(StringComparer.Ordinal)
    {
        ["lime-mehlich-north-carolina"] = ["acidity-coefficient", "buffer-start-ph", "reference-ph"],
        ["lime-modified-mehlich-pennsylvania"] = ["acidity-limit", "fixed-rate-target-6-5", "rate-per-acidity-target-6-5", "rate-per-acidity-target-7-0"],
        ["lime-adams-evans"] =
        [
            "acidity-coefficient", "buffer-start-ph", "lime-per-acidity", "efficiency-factor", "cec-limit", "rate-limit",
            "saturation-constant", "saturation-linear", "saturation-square",
        ],
    };

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
        if (folder.TableIn(document.Folder, needed) is not { } table)
        {
            if (!folder.IsUnread(needed))
            {
                yield return document.At("kind", Code, $"This kind of method needs {needed.FileName}.csv beside it.");
            }
        }
        else if (isEquation && Coefficients.GetValueOrDefault(document.Value.Formula ?? "", []).Except(table.Rows.Select(r => r["symbol"]).OfType<string>()).ToList() is { Count: > 0 } missing)
        {
            yield return document.At("formula", Code, $"The formula {document.Value.Formula} lacks {string.Join(", ", missing)} in {needed.FileName}.csv.");
        }
        if (folder.TableIn(document.Folder, foreign) is not null)
        {
            yield return document.At("kind", Code, $"This kind of method has no {foreign.FileName}.csv; nothing would read it.");
        }
    }
}
