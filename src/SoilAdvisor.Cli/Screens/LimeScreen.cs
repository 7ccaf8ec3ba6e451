using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>The lime of one sample on the terminal.</summary>
internal static class LimeScreen
{
    public static void Draw(IAnsiConsole screen, string sample, JsonElement answer, Places places)
    {
        var requirement = answer.At("requirement");
        screen.Heading($"Lime for soil test \"{sample}\"");
        if (requirement.ValueKind == JsonValueKind.Object)
        {
            screen.Paragraph($"Requirement: {Figures.Amount(requirement)} of {requirement.Text("basis")}, for {Figures.Amount(requirement.At("depth"))}. pH {requirement.Text("soilPh")}, target {requirement.Text("targetPh")}.");
            screen.Paragraph($"Method: {requirement.Text("method")} [{Sheets.Cited(requirement)}].");
        }

        if (answer.Each("choices").Any())
        {
            var table = Sheets.Table("material", "rate", "on this area", "measure", "cost", "why");
            foreach (var choice in answer.Each("choices"))
            {
                var doses = choice.Each("doses").Count();
                table.Row(
                    choice.Text("name"),
                    Figures.Amount(choice.At("rate").At("perAcre")),
                    Figures.Weight(choice.At("perBed")),
                    choice.Has("perBed") ? Figures.Measure(choice.At("volume")) : "",
                    choice.Has("cost") ? Figures.Money(choice.At("cost")) : "",
                    $"{(doses > 1 ? $"In {doses} doses. " : "")}{string.Join(" ", choice.Each("reasons").Select(r => r.AsText()))}");
            }

            screen.Write(table);
        }

        screen.Refused(answer.Each("refused"));
        if (answer.Each("working").Any())
        {
            screen.Heading($"Working: lime of \"{sample}\"");
            WorkingScreen.Draw(screen, answer.Each("working"), places);
        }
    }
}
