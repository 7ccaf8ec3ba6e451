using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>For one analyte, extractant and use stands one spread: which row is used is said by the table and by nothing else.</summary>
internal sealed class SpreadOneRowCheck : ITableCheck
{
    public string Code => "spread-one-row";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.RowsOf(RowKinds.Variability)
        .Where(row => row["used_for"] is not (null or "information"))
        .GroupBy(row => (row["analyte"], row["extractant"], row["used_for"]))
        .SelectMany(group => group.Skip(1).Select(row => row.At(
            "used_for",
            Code,
            string.Create(CultureInfo.InvariantCulture, $"Line {group.First().Line} is already used for {row["used_for"]} of {row["analyte"]}. Use one row; write information in the other."))));
}
