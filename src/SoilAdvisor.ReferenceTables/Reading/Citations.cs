using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Kinds;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>Where a row or a document stands. A row without a source of its own stands where its document does.</summary>
internal static class Citations
{
    public static Citation Citation(this TableRow row) => row["source"] is { } own
        ? new Citation(own, row["locator"], EvidenceWords.Read(row.Needed("evidence")))
        : new Citation(row.Table.Document.Value.Source.Id, row["locator"] ?? row.Table.Document.Value.Source.Locator, EvidenceWords.Read(row.Needed("evidence")));

    public static Citation Citation(this ITableHead head) => new(head.Source.Id, head.Source.Locator, EvidenceWords.Read(head.Evidence));

    public static Citation Citation(this RatePairDocument pair) => new(pair.Source.Id, pair.Source.Locator, EvidenceWords.Read(pair.Evidence));
}
