using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A material that may be spread has a property without which it cannot be spread safely.</summary>
/// <param name="code">Code of this property.</param>
/// <param name="property">The property.</param>
/// <param name="words">What it is.</param>
internal sealed class MaterialPropertyCheck(string code, string property, string words) : ITableCheck
{
    public string Code => code;

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        if (folder.IsUnread(RowKinds.MaterialValues))
        {
            return [];
        }
        var known = folder.RowsOf(RowKinds.MaterialValues).Where(r => r["property"] == property).Select(r => r["material"]).ToHashSet(StringComparer.Ordinal);
        return folder.RowsOf(RowKinds.Materials)
            .Where(r => r["id"] is not null && r["organic_status"] != "prohibited" && r["category"] != "prohibited" && !known.Contains(r["id"]))
            .Select(r => r.At("id", code, $"{r["id"]} has no {words}. Add a row {property} to material-values.csv: it is not offered without one."));
    }
}
