using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

internal static class LimeScreen
{
    public static void Draw(IAnsiConsole screen, string sample, JsonElement answer) => screen.WriteLine(sample);
}
