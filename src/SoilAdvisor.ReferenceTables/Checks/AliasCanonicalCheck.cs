using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>An alias is not itself a crop's id, and is written once whatever its letters' case.</summary>
internal sealed class AliasCanonicalCheck : ITableCheck
{
    public string Code => "alias-canonical";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var crops = folder.IdsOf(RowKinds.Crops);
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in folder.RowsOf(RowKinds.Aliases))
        {
            if (row["alias"] is not { } alias)
            {
                continue;
            }
            if (crops.Contains(alias))
            {
                yield return row.At("alias", Code, $"\"{alias}\" is a crop's own id and cannot mean another crop.");
            }
            else if (!seen.Add(alias))
            {
                yield return row.At("alias", Code, $"\"{alias}\" is written twice; upper and lower case are the same name.");
            }
        }
    }
}
