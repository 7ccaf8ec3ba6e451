using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The sum of cations has each of its limits, at least one set of weights above zero, and something to say about ratios.</summary>
internal sealed class CationPartsCheck : ITableCheck
{
    private static readonly string[] Weights = ["ca", "mg", "k", "na"];

    public string Code => "cation-parts";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. from table in folder.TablesOf(RowKinds.CationLimits)
           let missing = RowKinds.CationLimitWords.Except(table.Rows.Select(r => r["limit"]).OfType<string>()).ToList()
           where missing.Count > 0
           select new TableProblem(table.Path, 1, "limit", Code, $"The sum of cations lacks {string.Join(", ", missing)}."),
        .. from kind in new[] { RowKinds.CationWeights, RowKinds.RatioTrials }
           from table in folder.TablesOf(kind)
           where table.Rows.Count == 0
           select new TableProblem(table.Path, 1, null, Code, "The table has no row; an answer needs at least one."),
        .. from row in folder.RowsOf(RowKinds.CationWeights)
           from column in Weights
           where row.Number(column) <= 0
           select row.At(column, Code, "The weight of a milliequivalent is above zero; charges are divided by it."),
    ];
}
