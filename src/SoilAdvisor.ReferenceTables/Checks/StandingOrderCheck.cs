using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Standings ascend with the classes: below, target, above, stop. A scale is a rating throughout or information throughout.</summary>
internal sealed class StandingOrderCheck : ITableCheck
{
    private static readonly string[] Order = ["below", "target", "above", "stop"];

    public string Code => "standing-order";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from table in folder.TablesOf(RowKinds.Ratings)
        from scale in ScaleRows.Of(table)
        from pair in scale.Rows.Zip(scale.Rows.Skip(1))
        let before = pair.First["standing"]
        let after = pair.Second["standing"]
        where (before == "information") != (after == "information") || (Order.Contains(after) && Array.IndexOf(Order, after) < Array.IndexOf(Order, before))
        select pair.Second.At("standing", Code, $"\"{after}\" follows \"{before}\". Standings ascend: {string.Join(", ", Order)}; information stands alone.");
}
