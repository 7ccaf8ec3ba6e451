using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The spans of a nitrate table begin at zero, follow each other in whole steps and end open; a higher test never means a higher rate.</summary>
internal sealed class SidedressSpansCheck : ITableCheck
{
    public string Code => "sidedress-spans";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        folder.RowsOf(RowKinds.SidedressRates).GroupBy(row => (row["crop"], row["manured"])).SelectMany(group => Faults([.. group]));

    private IEnumerable<TableProblem> Faults(IReadOnlyList<TableRow> rows)
    {
        var next = (decimal?)0;
        foreach (var (row, before) in rows.Zip(rows.Prepend(null)))
        {
            if (row.Number("nitrate_from") is { } from && from != next)
            {
                yield return row.At("nitrate_from", Code, string.Create(CultureInfo.InvariantCulture, $"The span begins at {from}; the one before asks for {(next is { } n ? n.ToString(CultureInfo.InvariantCulture) : "no further one")}."));
            }
            if (row.Number("rate") > before?.Number("rate"))
            {
                yield return row.At("rate", Code, "The rate rises with the nitrate found.");
            }
            next = row.Number("nitrate_to") + 1;
        }
        if (next is not null)
        {
            yield return rows[^1].At("nitrate_to", Code, "The last span is open: leave its upper end empty.");
        }
    }
}
