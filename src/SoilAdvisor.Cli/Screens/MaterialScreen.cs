using System.Globalization;
using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>What a pound of nutrient costs, and what tests of the materials say.</summary>
internal static class MaterialScreen
{
    private static readonly string[] Nutrients = ["N", "P2O5", "K2O"];

    public static void Draw(Paper paper, JsonElement plan)
    {
        var priced = plan.Each("materialPrices").Where(p => p.Each("nutrients").Any()).ToList();
        if (priced.Count > 0)
        {
            var first = priced[0].At("price");
            paper.Heading($"What a {(first.Text("per") == "kg" ? "kilogram" : "pound")} of nutrient that counts this season costs, {first.Text("currency")}");
            paper.Put(
                ["material", "N", "P2O5", "K2O"],
                [.. priced.Select(p => new[] { p.Text("name") }.Concat(Nutrients.Select(n => Cost(p, n))).ToArray())],
                firstIsWhole: false);
            paper.Paragraph("The whole price stands on each nutrient in turn: compare down a column, never add along a row.");
        }

        var tests = plan.Each("materialTests").ToList();
        if (tests.Count > 0)
        {
            paper.Heading("What the tests of your materials say");
            paper.List(tests.Select(t => $"{t.Text("material")}, {t.Text("subject")}, {t.Text("found")}: {t.Text("text")} [{paper.CitedShort(t)}]"));
        }
    }

    private static string Cost(JsonElement material, string nutrient)
    {
        var found = material.Each("nutrients").FirstOrDefault(n => n.Text("nutrient") == nutrient);
        if (found.ValueKind != JsonValueKind.Object)
        {
            return "";
        }

        var (low, high) = (Value(found.At("costAtHighEnd")), Value(found.At("cost")));
        return low == high ? high : $"{low} to {high}";
    }

    private static string Value(JsonElement cost) => cost.At("value").TryGetDecimal(out var value) ? value.ToString("#,0.00", CultureInfo.InvariantCulture) : "";
}
