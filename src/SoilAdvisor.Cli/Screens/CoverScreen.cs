using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

internal static class CoverScreen
{
    public static void Draw(IAnsiConsole screen, JsonElement answer) => screen.WriteLine("");
}
