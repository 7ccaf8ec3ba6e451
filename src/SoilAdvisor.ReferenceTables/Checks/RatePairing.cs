using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A rate table with one of the guides that it is read with.</summary>
/// <param name="Document">The rate table.</param>
/// <param name="Place">Where the pair stands in the document, for example <c>readWith[0]</c>.</param>
/// <param name="Pair">The pair.</param>
/// <param name="Rates">The rows of the rate table.</param>
/// <param name="Scales">The rating scales of the guide.</param>
internal sealed record RatePairing(Document<RateTableDocument> Document, string Place, RatePairDocument Pair, IReadOnlyList<TableRow> Rates, IReadOnlyList<ScaleRows> Scales)
{
    /// <summary>The class of a rate that no class changes.</summary>
    public const string AnyClass = "all";

    /// <summary>The scales on which a nutrient of the rate table is looked up.</summary>
    public IEnumerable<ScaleRows> ScalesOf(string nutrient) => Scales.Where(s => s.First["analyte"] == AnalyteOf(nutrient));

    /// <summary>Nutrients whose rate depends on the class.</summary>
    public IEnumerable<string> ClassedNutrients => Rates.Where(r => r["class"] is not (null or AnyClass)).Select(r => r["nutrient"]).OfType<string>().Distinct();

    /// <summary>Every pair of a class table whose guide was read.</summary>
    public static IEnumerable<RatePairing> Of(TableFolder folder) =>
        from document in folder.RateTables
        where document.Value.Kind == RateTableDocument.ClassTable
        from pair in document.Value.ReadWith.Index()
        let guide = folder.Guides.FirstOrDefault(g => g.Value.Id == pair.Item.Guide)
        where guide is not null
        let ratings = folder.TableIn(guide.Folder, RowKinds.Ratings)
        let rates = folder.TableIn(document.Folder, RowKinds.Rates)
        where ratings is not null && rates is not null
        select new RatePairing(
            document,
            string.Create(CultureInfo.InvariantCulture, $"readWith[{pair.Index}]"),
            pair.Item,
            rates.Rows,
            [.. ScaleRows.Of(ratings).Where(s => !s.IsInformation)]);

    // Guides recommend oxides for phosphorus and potassium and rate the elements in the soil.
    private static string AnalyteOf(string nutrient) => nutrient switch
    {
        nameof(PlantNutrient.P2O5) => "P",
        nameof(PlantNutrient.K2O) => "K",
        nameof(PlantNutrient.N) => "NO3-N",
        _ => nutrient,
    };
}
