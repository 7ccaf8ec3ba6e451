using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>All classes of a scale are printed with the same decimals.</summary>
internal sealed class ScaleUniformCheck : ITableCheck
{
    public string Code => "scale-uniform";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from table in folder.TablesOf(RowKinds.Ratings)
        from scale in ScaleRows.Of(table)
        from row in scale.Rows
        let fault = Fault(scale, row)
        where fault is not null
        select row.At("printed_decimals", Code, fault);

    private static string? Fault(ScaleRows scale, TableRow row) => row["printed_decimals"] switch
    {
        var other when other != scale.First["printed_decimals"] => $"The class {row["class"]} is printed with other decimals than the first class of its scale. A value is rounded once for the whole scale: write the same in all.",
        { } own when TableRow.TryNumber(own, out var number) && !ScaleRows.IsCountOfDecimals(number) => $"\"{own}\" is not a number of decimals from 0 to 6.",
        _ => null,
    };
}
