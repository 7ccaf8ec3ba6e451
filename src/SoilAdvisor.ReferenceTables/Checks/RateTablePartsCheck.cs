using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A class table has rates; a build-up rule has all its coefficients.</summary>
internal sealed class RateTablePartsCheck : ITableCheck
{
    private static readonly string[] Symbols =
    [
        "p-critical", "p-maintenance-upper", "p-build-up-per-year", "k-critical-base", "k-critical-per-cec", "k-maintenance-width",
        "k-build-up-base", "k-build-up-per-cec", "k-build-up-constant", "years",
    ];

    public string Code => "rate-table-parts";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.RateTables.SelectMany(d => Faults(d, folder));

    private IEnumerable<TableProblem> Faults(Document<RateTableDocument> document, TableFolder folder)
    {
        var isRule = document.Value.Kind == RateTableDocument.BuildUpAndMaintenance;
        var (needed, foreign) = isRule ? (RowKinds.RateParameters, RowKinds.Rates) : (RowKinds.Rates, RowKinds.RateParameters);
        var table = folder.TableIn(document.Folder, needed);
        if (table is null && !folder.IsUnread(needed))
        {
            yield return document.At("kind", Code, $"A {document.Value.Kind} needs {needed.FileName}.csv beside it.");
        }
        if (folder.TableIn(document.Folder, foreign) is not null)
        {
            yield return document.At("kind", Code, $"A {document.Value.Kind} has no {foreign.FileName}.csv; nothing would read it.");
        }
        var missing = isRule && table is not null ? Symbols.Except(table.Rows.Select(r => r["symbol"]).OfType<string>()).ToList() : [];
        if (missing.Count > 0)
        {
            yield return document.At("kind", Code, $"The rule lacks {string.Join(", ", missing)} in {needed.FileName}.csv.");
        }
    }
}
