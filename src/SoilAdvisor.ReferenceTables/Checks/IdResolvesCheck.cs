using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Acidity;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A row that names a crop, material, caution or cover crop names one that is written.</summary>
/// <param name="code">Code of this reference.</param>
/// <param name="defines">The kind of table that writes them.</param>
/// <param name="column">The column that names one.</param>
/// <param name="users">The kinds of table that have that column.</param>
internal sealed class IdResolvesCheck(string code, RowKind defines, string column, params RowKind[] users) : ITableCheck
{
    public string Code => code;

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        if (folder.IsUnread(defines))
        {
            return [];
        }
        var known = folder.IdsOf(defines);
        return from user in users
               let named = user == RowKinds.TargetPhs ? "crops" : column
               from row in folder.RowsOf(user)
               from id in row.Parts(named)
               where id != TargetPhBuilding.AllOthers && !known.Contains(id)
               select row.At(named, code, $"\"{id}\" is not written in {defines.Home}/{defines.FileName}.csv.{Nearest(id, known)}");
    }

    private static string Nearest(string id, IEnumerable<string> known) => NearestNames.Of(id, known) is { Count: > 0 } near ? $" Did you mean {string.Join(" or ", near)}?" : "";
}
