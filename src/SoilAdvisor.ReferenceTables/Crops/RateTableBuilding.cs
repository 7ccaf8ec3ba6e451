using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Crops;

/// <summary>From a checked folder to the rate table.</summary>
internal static class RateTableBuilding
{
    public static RateTable Build(Document<RateTableDocument> document, TableFolder folder)
    {
        var table = document.Value;
        return new RateTable(
            table.Id,
            table.Title,
            table.Institution,
            [.. table.Region],
            table.Kind == RateTableDocument.ClassTable ? RateTableKind.ClassTable : RateTableKind.BuildUpAndMaintenance,
            table.AreaBasis,
            [.. table.ReadWith.Select(pair => new RatePair(pair.Guide, pair.Classes.ToDictionary(StringComparer.Ordinal).AsReadOnly(), pair.Citation(), pair.Note))],
            [.. folder.RowsIn(document.Folder, RowKinds.Rates).Select(Rate)],
            [.. folder.RowsIn(document.Folder, RowKinds.Splits).Select(Split)],
            [.. folder.RowsIn(document.Folder, RowKinds.RateParameters).Select(Parameter)],
            [.. folder.RowsIn(document.Folder, RowKinds.Credits).Select(Credit)],
            table.Citation(),
            table.Notes);
    }

    /// <summary>A coefficient: rate tables and lime methods write them alike.</summary>
    public static RateParameter Parameter(TableRow row) =>
        new(row.Needed("symbol"), row.Needed("meaning"), row.NeededNumber("value"), row.Needed("unit"), row.Citation());

    private static RateRow Rate(TableRow row) => new(
        row.Needed("crop"),
        row.Nutrient(),
        row.Needed("class"),
        row.RateRange(),
        row.NeededNumber("low"),
        row.Number("high"),
        row.Needed("unit"),
        row.SoilGroups(),
        row["condition"],
        row.Citation(),
        row["note"]);

    private static RateSplit Split(TableRow row) =>
        new(row.Needed("crop"), row.Nutrient(), (int)row.NeededNumber("order"), row["low"] is null ? null : row.RateRange(), row.Needed("when"), row.Citation())
        {
            Time = row.Needed("timing") switch
            {
                "base" => DressingTime.Base,
                "sidedress" => DressingTime.Sidedress,
                _ => DressingTime.ThroughSeason,
            },
            Weeks = row.Number("weeks_from") is { } from ? (from, row.NeededNumber("weeks_to")) : null,
            Day = row["month_day"] is { } day ? (int.Parse(day.AsSpan(0, 2), CultureInfo.InvariantCulture), int.Parse(day.AsSpan(3, 2), CultureInfo.InvariantCulture)) : null,
        };

    private static CreditRow Credit(TableRow row) => new(
        row.Needed("kind"),
        row.Needed("what"),
        row.NeededNumber("low"),
        row.Number("high"),
        row.Needed("unit"),
        row["timing"],
        row["condition"],
        row.Citation(),
        row["note"]);
}
