using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Every source that is named is in a bibliography.</summary>
internal sealed class SourceKnownCheck : ITableCheck
{
    public string Code => "source-known";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        if (folder.IsUnread("sources.json"))
        {
            return [];
        }
        var known = folder.Sources.Select(s => s.Source.Id).ToHashSet(StringComparer.Ordinal);
        return UsedSource.Of(folder).Where(used => used.Id.Length > 0 && !known.Contains(used.Id)).Select(used => used.Fault(Code, $"The source \"{used.Id}\" is in no sources.json. Describe it in the one of its subject."));
    }
}
