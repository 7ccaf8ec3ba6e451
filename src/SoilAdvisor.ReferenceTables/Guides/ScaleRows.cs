using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Guides;

/// <summary>The rows of one scale, in file order: what is rated, how it was measured and to whom the limits apply are the same in all.</summary>
/// <param name="Rows">One row a class.</param>
internal sealed record ScaleRows(IReadOnlyList<TableRow> Rows)
{
    private static readonly string[] Identity =
        ["analyte", "extractant", "detection", "method", "unit", "crop_group", "soil_group", "subregion", "conditions", "timing", "depth_from", "depth_to"];

    public TableRow First => Rows[0];

    /// <summary>What is rated: an analyte, or the id of an index of the same guide.</summary>
    public string Rated => First.Needed("analyte");

    public bool IsInformation => Rows.All(r => r["standing"] == "information");

    /// <summary>Decimals to which a value is rounded before it is looked up; null for none.</summary>
    public int? PrintedDecimals => First.Number("printed_decimals") is { } decimals && IsCountOfDecimals(decimals) ? (int)decimals : null;

    /// <summary>True for a whole number from 0 to 6; no laboratory prints more.</summary>
    public static bool IsCountOfDecimals(decimal number) => number is >= 0 and <= 6 && decimal.IsInteger(number);

    public static IEnumerable<ScaleRows> Of(Table ratings) =>
        ratings.Rows.GroupBy(row => string.Join('\n', Identity.Select(column => row[column]))).Select(group => new ScaleRows([.. group]));
}
