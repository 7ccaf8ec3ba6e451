using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>The arithmetic, as a teacher writes it on a board: the formula, what goes in and where it comes from, what comes out.</summary>
internal static class WorkingScreen
{
    // Room for a hand.
    private const string Blank = "____________";

    public static void Draw(Paper paper, IEnumerable<JsonElement> lines)
    {
        foreach (var line in lines)
        {
            paper.Blank();
            paper.Paragraph($"Line {line.Text("id")}: {line.Text("title")}{(line.Text("section") is { } section ? $" ({section})" : "")}");
            if (line.Text("shown") is { Length: > 0 } shown)
            {
                paper.Indented(shown, 4);
            }

            paper.Put(Inputs(paper, line));
            var result = line.At("result");
            paper.Indented($"{result.Text("symbol")} = {result.Text("value") ?? result.Text("text") ?? Blank} {result.Text("unit")}".Trim(), 4, strong: true);
            paper.Indented($"[{paper.Cited(line)}]", 4);
        }
    }

    private static Grid Inputs(Paper paper, JsonElement line)
    {
        var inputs = new Grid()
            .AddColumn(new GridColumn().PadLeft(6).PadRight(2).NoWrap())
            .AddColumn(new GridColumn().PadRight(2))
            .AddColumn(new GridColumn().PadRight(0));
        foreach (var input in line.Each("inputs"))
        {
            inputs.AddRow(
                new Text(input.Text("symbol") ?? ""),
                new Text(Wrapped.Visible($"= {input.Text("value") ?? input.Text("text") ?? Blank} {input.Text("unit")}".TrimEnd())),
                new Text(Wrapped.Visible($"{input.Text("name")}, {Origin(paper, input)}")));
        }

        return inputs;
    }

    private static string Origin(Paper paper, JsonElement input) => input.Text("from") switch
    {
        "given" => $"given: {paper.Places.Of(input.Text("where") ?? "")}",
        "computed" => $"from line {input.Text("line")}",
        _ => $"from [{paper.Cited(input)}]",
    };
}
