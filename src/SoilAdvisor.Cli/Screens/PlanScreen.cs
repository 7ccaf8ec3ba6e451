using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>A plan on the terminal.</summary>
internal static class PlanScreen
{
    public static void Draw(IAnsiConsole screen, JsonElement plan)
    {
        screen.WriteLine(plan.Text("farm") ?? "Plan");
    }
}
