using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>
/// What a class or a limit of law is about is an analyte or an index of the same guide. An index stands in the unit of its formula's result and
/// names no method of its own. Lead has reference ranges only: extractable lead is never rated.
/// </summary>
internal sealed class RatedKnownCheck : ITableCheck
{
    public string Code => "rated-known";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from kind in new[] { RowKinds.Ratings, RowKinds.Ceilings }
        from table in folder.TablesOf(kind)
        let indices = IndexRows.Of(folder, table.Folder)
        from row in table.Rows
        where row["analyte"] is not null
        let fault = Fault(row, indices)
        where fault is not null
        select fault;

    private TableProblem? Fault(TableRow row, IReadOnlyDictionary<string, IndexRows> indices)
    {
        var rated = row["analyte"]!;
        if (indices.TryGetValue(rated, out var index))
        {
            return (row["extractant"] ?? row["method"]) is not null
                ? row.At("extractant", Code, $"{rated} is an index: its readings and their methods stand in indices.csv. Leave extractant and method empty.")
                : index.Formula is { } formula && formula.Result.Unit != row["unit"]
                    ? row.At("unit", Code, $"The formula of {rated} gives {formula.Result.Unit}, not {row["unit"]}.")
                    : null;
        }
        if (!Words.Analytes.Ids.Contains(rated))
        {
            var near = NearestNames.Of(rated, Words.Analytes.Ids.Concat(indices.Keys));
            return row.At("analyte", Code, $"\"{rated}\" is neither an analyte nor an index of this guide.{(near.Count > 0 ? $" Did you mean {string.Join(" or ", near)}?" : "")}");
        }
        return rated == "Pb" && row["standing"] is not (null or "information")
            ? row.At("standing", Code, "Extractable lead is a screen, not a rating. Its standing is information.")
            : null;
    }
}
