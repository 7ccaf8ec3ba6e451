using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Every document, pair and row says how its values came to us, in a known word.</summary>
internal sealed class EvidenceKnownCheck : ITableCheck
{
    public string Code => "evidence-known";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. folder.Heads.Where(h => IsUnknown(h.Head.Evidence)).Select(h => h.File.At("evidence", Code, Say(h.Head.Evidence))),
        .. from document in folder.RateTables
           from pair in document.Value.ReadWith.Index()
           where IsUnknown(pair.Item.Evidence)
           select document.At(string.Create(CultureInfo.InvariantCulture, $"readWith[{pair.Index}].evidence"), Code, Say(pair.Item.Evidence)),
        .. folder.Tables.SelectMany(t => t.Rows).Where(r => r["evidence"] is { } word && IsUnknown(word)).Select(r => r.At("evidence", Code, Say(r["evidence"]!))),
    ];

    private static bool IsUnknown(string word) => !EvidenceWords.All.Contains(word);

    private static string Say(string word) => $"\"{word}\" is not an evidence word. Write {string.Join(", ", EvidenceWords.All)}.";
}
