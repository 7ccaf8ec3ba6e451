using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The extractant or method is one by which the analyte is measured: nutrients by an extractant, pH and the like by a procedure of their own.</summary>
internal sealed class MethodFitsCheck : ITableCheck
{
    public string Code => "method-fits";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from row in folder.RowsOf(RowKinds.Ratings)
        where row["analyte"] is { } word && Words.Analytes.Ids.Contains(word)
        let fault = Fault(row, Words.Analytes.Read(row["analyte"]!).Value)
        where fault is not null
        select fault;

    private TableProblem? Fault(TableRow row, Analyte analyte)
    {
        if (Words.ProceduresOf(analyte) is not { } procedures)
        {
            return row["method"] is { } method
                ? row.At("method", Code, $"{row["analyte"]} has no method \"{method}\": it is measured by an extractant.")
                : row["extractant"] is null && analyte is not (Analyte.Acidity or Analyte.NitrateN or Analyte.AmmoniumN or Analyte.Cl)
                    ? row.At("extractant", Code, $"The extractant is missing. {row["analyte"]} by one extractant is another number than by the next.")
                    : null;
        }
        if (row["extractant"] is { } extractant)
        {
            return row.At("extractant", Code, $"{row["analyte"]} is not measured by an extractant, {extractant}; name its method.");
        }
        return row["method"] is null or "not-stated" || procedures.Ids.Contains(row["method"]!)
            ? null
            : row.At("method", Code, $"\"{row["method"]}\" is not a method for {row["analyte"]}. Known: {string.Join(", ", procedures.Ids)}, not-stated.");
    }
}
