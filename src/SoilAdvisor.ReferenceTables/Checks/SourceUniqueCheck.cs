using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A source is described once in all bibliographies.</summary>
internal sealed class SourceUniqueCheck : ITableCheck
{
    public string Code => "source-unique";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.Sources
        .GroupBy(s => s.Source.Id, StringComparer.Ordinal)
        .SelectMany(group => group.Skip(1).Select(s => s.File.At($"{s.Place}.id", Code, $"The source \"{s.Source.Id}\" is already described in {group.First().File.Path}. Keep one.")));
}
