using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A place that names a source.</summary>
/// <param name="Id">Id of the source.</param>
/// <param name="Fault">Makes a problem of that place from a code and words.</param>
internal sealed record UsedSource(string Id, Func<string, string, TableProblem> Fault)
{
    /// <summary>Every such place: documents, pairs and rows.</summary>
    public static IEnumerable<UsedSource> Of(TableFolder folder) =>
    [
        .. folder.Heads.Select(h => new UsedSource(h.Head.Source.Id, (code, words) => h.File.At("source.id", code, words))),
        .. from document in folder.RateTables
           from pair in document.Value.ReadWith.Index()
           select new UsedSource(pair.Item.Source.Id, (code, words) => document.At(string.Create(CultureInfo.InvariantCulture, $"readWith[{pair.Index}].source.id"), code, words)),
        .. from table in folder.Tables
           from row in table.Rows
           where row["source"] is not null
           select new UsedSource(row["source"]!, (code, words) => row.At("source", code, words)),
    ];
}
