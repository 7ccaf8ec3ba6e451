using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>For one nutrient, extractant and region stands one figure, and one drawdown in all: which is used is said by the table and by nothing else.</summary>
internal sealed class TestChangeOneRowCheck : ITableCheck
{
    public string Code => "test-change-one-row";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var rows = folder.RowsOf(RowKinds.TestChanges).ToList();
        return
        [
            .. rows.Where(r => r["used_for"] == "projection")
                .SelectMany(row => row.Parts("regions").DefaultIfEmpty("no region").Select(region => (Row: row, Region: region)))
                .GroupBy(r => (r.Row["nutrient"], r.Row["extractant"], r.Region))
                .SelectMany(g => g.Skip(1).Select(r => Twice(g.First().Row, r.Row, $"{r.Row["nutrient"]} by {r.Row["extractant"]} in {r.Region}"))),
            .. rows.Where(r => r["used_for"] == "drawdown").Skip(1).Select(row => Twice(rows.First(r => r["used_for"] == "drawdown"), row, "drawdown")),
        ];
    }

    private TableProblem Twice(TableRow first, TableRow row, string what) =>
        row.At("used_for", Code, string.Create(CultureInfo.InvariantCulture, $"Line {first.Line} is already used for {what}. Use one row; write information in the other."));
}
