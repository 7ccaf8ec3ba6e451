using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Guides;

/// <summary>The rows of one index of a guide: one for each symbol of its formula.</summary>
/// <param name="Id">Id of the index.</param>
/// <param name="Rows">Its rows, in file order.</param>
internal sealed record IndexRows(string Id, IReadOnlyList<TableRow> Rows)
{
    /// <summary>The nutrient it speaks of, as the first row says.</summary>
    public Analyte About => Words.Analytes.Read(Rows[0].Needed("about")).Value;

    /// <summary>The formula that the first row names; null where the catalogue has none of that id.</summary>
    public IFormula? Formula => Formulas.All.FirstOrDefault(f => f.Id == Rows[0]["formula"]);

    /// <summary>The indices of one guide folder by id.</summary>
    public static IReadOnlyDictionary<string, IndexRows> Of(TableFolder folder, string guideFolder) => folder.RowsIn(guideFolder, RowKinds.Indices)
        .Where(row => row["index"] is not null)
        .GroupBy(row => row.Needed("index"), StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => new IndexRows(g.Key, [.. g]), StringComparer.Ordinal);
}
