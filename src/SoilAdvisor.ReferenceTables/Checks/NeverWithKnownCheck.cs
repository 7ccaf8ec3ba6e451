using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>What a material is never spread with is a material or a category of them.</summary>
internal sealed class NeverWithKnownCheck : ITableCheck
{
    public string Code => "never-with-known";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var known = folder.IdsOf(RowKinds.Materials);
        known.UnionWith(RowKinds.MaterialCategories);
        return from row in folder.RowsOf(RowKinds.Materials)
               from other in row.Parts("never_with")
               where !known.Contains(other)
               select row.At("never_with", Code, $"\"{other}\" is neither a material nor a category of materials. Join several with semicolons, without blanks.");
    }
}
