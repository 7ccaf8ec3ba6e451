using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Every document and pair names a source, and every document what it was transcribed from.</summary>
internal sealed class CitationPresentCheck : ITableCheck
{
    public string Code => "citation-present";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. UsedSource.Of(folder).Where(used => string.IsNullOrWhiteSpace(used.Id)).Select(used => used.Fault(Code, "No source is named. A number without its source is not used.")),
        .. folder.Heads.Where(h => string.IsNullOrWhiteSpace(h.Head.TranscribedFrom)).Select(h => h.File.At("transcribedFrom", Code, "It is not said what the figures were copied from. Say so, and whether the publication itself was read.")),
        .. folder.Heads.Where(h => string.IsNullOrWhiteSpace(h.Head.Title)).Select(h => h.File.At("title", Code, "The title is empty.")),
    ];
}
