using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A table has exactly the columns of its kind, each of the type that the kind asks for, and none looser than it.</summary>
internal sealed class ColumnsOfKindCheck : ITableCheck
{
    public string Code => "columns-of-kind";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.Tables.SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(Table table)
    {
        var declared = table.Document.Value.Columns;
        var needed = table.Kind.Columns.Select(c => c.Name).ToList();
        if (!declared.Keys.SequenceEqual(needed, StringComparer.Ordinal))
        {
            yield return table.Document.At("columns", Code, $"A table of kind {table.Kind.Name} has exactly these columns, in this order: {string.Join(',', needed)}.");
        }
        foreach (var column in table.Kind.Columns)
        {
            if (!declared.TryGetValue(column.Name, out var specification))
            {
                continue;
            }
            var member = $"columns.{column.Name}";
            if (!column.Accepts(specification.Type))
            {
                yield return table.Document.At(member, Code, $"The type is \"{specification.Type}\"; the kind {table.Kind.Name} asks for {column.Type}. Known types: {string.Join(", ", ColumnType.All)}.");
            }
            if (specification.Optional && !column.Optional)
            {
                yield return table.Document.At(member, Code, $"The column may not be optional: a row of kind {table.Kind.Name} means nothing without it.");
            }
        }
    }
}
