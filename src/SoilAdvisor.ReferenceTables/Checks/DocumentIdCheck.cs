using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A document's id says where it lies: the path of a table, the folder of a guide, rate table or lime method.</summary>
internal sealed class DocumentIdCheck : ITableCheck
{
    public string Code => "document-id";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. folder.Tables.SelectMany(t => Fault(t.Document, t.Document.Value.Id, t.Path[..^4])),
        .. folder.Guides.SelectMany(d => Fault(d, d.Value.Id, LastOf(d))),
        .. folder.RateTables.SelectMany(d => Fault(d, d.Value.Id, LastOf(d))),
        .. folder.LimeMethods.SelectMany(d => Fault(d, d.Value.Id, LastOf(d))),
    ];

    private static string LastOf(Document document) => document.Folder[(document.Folder.LastIndexOf('/') + 1)..];

    private IEnumerable<TableProblem> Fault(Document document, string id, string expected) =>
        id == expected ? [] : [document.At("id", Code, $"The id is \"{id}\"; by its place it is \"{expected}\".")];
}
