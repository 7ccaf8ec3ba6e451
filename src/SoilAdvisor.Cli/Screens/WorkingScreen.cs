using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>The arithmetic, as a teacher writes it on a board: the formula, what goes in and where it comes from, what comes out.</summary>
internal static class WorkingScreen
{
    public static void Draw(IAnsiConsole screen, IEnumerable<JsonElement> lines, Places places)
    {
        foreach (var line in lines)
        {
            screen.WriteLine();
            screen.Paragraph($"Line {line.Text("id")}: {line.Text("title")}");
            screen.Write(new Padder(new Text(line.Text("shown") ?? ""), new Padding(4, 0, 0, 0)));
            var inputs = new Grid()
                .AddColumn(new GridColumn().PadLeft(6).PadRight(2).NoWrap())
                .AddColumn(new GridColumn().PadRight(2))
                .AddColumn(new GridColumn().PadRight(0));
            foreach (var input in line.Each("inputs"))
            {
                inputs.AddRow(
                    new Text(input.Text("symbol") ?? ""),
                    new Text($"= {input.Text("value") ?? input.Text("text")} {input.Text("unit")}".TrimEnd()),
                    new Text($"{input.Text("name")}, {Origin(input, places)}"));
            }

            screen.Write(inputs);
            var result = line.At("result");
            screen.Write(new Padder(
                new Text($"{result.Text("symbol")} = {result.Text("value") ?? result.Text("text")} {result.Text("unit")}".TrimEnd(), new Style(decoration: Decoration.Bold)),
                new Padding(4, 0, 0, 0)));
            screen.Write(new Padder(new Text($"[{Sheets.Cited(line)}]"), new Padding(4, 0, 0, 0)));
        }
    }

    private static string Origin(JsonElement input, Places places) => input.Text("from") switch
    {
        "given" => $"given: {places.Of(input.Text("where") ?? "")}",
        "computed" => $"from line {input.Text("line")}",
        _ => $"from [{Sheets.Cited(input)}]",
    };
}
