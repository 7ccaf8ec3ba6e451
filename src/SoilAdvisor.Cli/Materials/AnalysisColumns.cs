using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Files;

namespace SoilAdvisor.Cli.Materials;

/// <summary>The columns of a list of materials that hold a label's or a laboratory's figures.</summary>
internal static class AnalysisColumns
{
    private static readonly IReadOnlyList<(string Member, Column Column)> Plain =
    [
        ("n", new("nitrogen", "%")),
        ("p2o5", new("p2o5", "%")),
        ("k2o", new("k2o", "%")),
        ("phosphorus", new("phosphorus", "%")),
        ("potassium", new("potassium", "%")),
        ("moisture", new("moisture", "%")),
        ("neutralisingValue", new("neutralising value", "%")),
        ("calcium", new("calcium", "%")),
        ("magnesium", new("magnesium", "%")),
        ("sulfur", new("sulfur", "%")),
        ("sodium", new("sodium", "%")),
        ("carbon", new("carbon", "%")),
        ("carbonToNitrogen", new("carbon to nitrogen")),
        ("from", new("analysis by")),
        ("date", new("analysis date")),
        ("basis", new("basis")),
    ];

    private static readonly IReadOnlyList<(string Symbol, Column Column)> Metals =
    [
        ("As", new("arsenic", "mg/kg")),
        ("Cd", new("cadmium", "mg/kg")),
        ("Cr", new("chromium", "mg/kg")),
        ("Co", new("cobalt", "mg/kg")),
        ("Cu", new("copper", "mg/kg")),
        ("Pb", new("lead", "mg/kg")),
        ("Hg", new("mercury", "mg/kg")),
        ("Mo", new("molybdenum", "mg/kg")),
        ("Ni", new("nickel", "mg/kg")),
        ("Se", new("selenium", "mg/kg")),
        ("Zn", new("zinc", "mg/kg")),
    ];

    private static readonly Column Conductivity = new("conductivity", "dS/m");
    private static readonly Column Extract = new("extract");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Column> All { get; } = [.. Plain.Select(c => c.Column), .. Metals.Select(c => c.Column), Conductivity, Extract];

    /// <summary>The analysis of a row; null where every cell is empty.</summary>
    public static JsonObject? Read(Cells cells)
    {
        var analysis = Members.Of(
        [
            .. Plain.Select(c => (c.Member, cells.Text($"analysis/{c.Member}", c.Column))),
            ("metals", ReadMetals(cells)),
            ("salt", ReadSalt(cells)),
        ]);
        return analysis.Count > 0 ? analysis : null;
    }

    private static JsonArray? ReadMetals(Cells cells)
    {
        var metals = new JsonArray();
        foreach (var (symbol, column) in Metals)
        {
            if (cells.Text($"analysis/metals/{metals.Count}/value", column) is { } value)
            {
                metals.Add(Members.Of(("metal", JsonValue.Create(symbol)), ("value", value), ("unit", cells.UnitOf(column))));
            }
        }

        return metals.Count > 0 ? metals : null;
    }

    private static JsonObject? ReadSalt(Cells cells) => cells.Text("analysis/salt/value", Conductivity) is { } value
        ? Members.Of(("value", value), ("unit", cells.UnitOf(Conductivity)), ("extract", cells.Text("analysis/salt/extract", Extract)))
        : null;
}
