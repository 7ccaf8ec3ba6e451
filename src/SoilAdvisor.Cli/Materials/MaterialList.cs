using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Files;

namespace SoilAdvisor.Cli.Materials;

/// <summary>Turns a list of the materials on the shelf into the materials of a request. Columns: docs/bed-list.md.</summary>
internal static class MaterialList
{
    private static readonly Column Material = new("material", Required: true);
    private static readonly Column Price = new("price", "USD");
    private static readonly Column For = new("for", "lb");
    private static readonly Column OnHand = new("on hand", "lb");
    private static readonly Column Pack = new("pack", "lb");
    private static readonly Column Freight = new("freight", "USD");
    private static readonly Column Origin = new("origin");
    private static readonly Column Most = new("most", "lb/acre");
    private static readonly IReadOnlyList<Column> All = [Material, Price, For, OnHand, Pack, Freight, Origin, Most, .. AnalysisColumns.All];

    /// <summary>The materials; null when the list cannot be read. All faults are among the complaints.</summary>
    public static JsonNode? Read(InputFile file, Places places, List<Complaint> complaints)
    {
        if (file.IsJson)
        {
            places.NoteDocument("/materials", file.Name);
            return JsonText.Read(file, complaints);
        }

        if (Sheet.Read(file, All, complaints) is not { } sheet)
        {
            return null;
        }

        var materials = new JsonArray();
        for (var i = 0; i < sheet.Rows.Count; i++)
        {
            places.Note($"/materials/{i}", $"{sheet.File} line {sheet.Rows[i].Line}");
            materials.Add(Offer(new Cells(sheet, sheet.Rows[i], $"/materials/{i}", places, complaints)));
        }

        return materials;
    }

    private static JsonObject Offer(Cells cells) => Members.Of(
        ("material", cells.Text("material", Material)),
        ("price", Money(cells)),
        ("onHand", cells.Measure("onHand", OnHand)),
        ("pack", cells.Measure("pack", Pack)),
        ("freight", cells.Text("freight/value", Freight) is { } freight ? Members.Of(("value", freight), ("currency", cells.UnitOf(Freight))) : null),
        ("origin", cells.Text("origin", Origin)),
        ("most", cells.Measure("most", Most)),
        ("analysis", AnalysisColumns.Read(cells)));

    private static JsonObject? Money(Cells cells) => cells.Text("price/value", Price) is { } price
        ? Members.Of(("value", price), ("currency", cells.UnitOf(Price)), ("per", cells.Measure("price/per", For)))
        : null;
}
