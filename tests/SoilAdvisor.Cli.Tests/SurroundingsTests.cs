using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>What lies around on a machine must not change what the command does.</summary>
public sealed class SurroundingsTests
{
    [Fact]
    public async Task Settings_meant_for_a_server_and_stray_files_are_ignored()
    {
        using var folder = new ScratchFolder();
        folder.File("appsettings.json", """{"Urls": "http://127.0.0.1:1", "Kestrel": {"Endpoints": {"Stray": {"Url": "http://127.0.0.1:1"}}}, "Limits": {"BodyBytes": 1}}""");
        folder.File("appsettings.Production.json", "this is not JSON");
        var run = await SoilCommand.Run(
            folder.Path,
            [("ASPNETCORE_URLS", "http://127.0.0.1:1"), ("DOTNET_URLS", "http://127.0.0.1:1"), ("ASPNETCORE_ENVIRONMENT", "Development"), ("ASPNETCORE_CONTENTROOT", folder.Path), ("HTTP_PROXY", "http://127.0.0.1:1"), ("Limits__BodyBytes", "1")],
            ["rate", Path.Combine(SoilCommand.Top, "docs/demo/lab.csv"), "--guide", "delaware-vegetables"]);
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Equal("", run.Talk);
        Assert.Contains("Low", run.Results, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_terminal_shows_styles_and_no_color_takes_them_away()
    {
        // script(1) gives the command a terminal; it belongs to every Debian system.
        var styled = await Terminal.Run([], "show lime-methods");
        var plain = await Terminal.Run([("NO_COLOR", "1")], "show lime-methods");
        Assert.Matches("\u001b\\[[0-9;]+m", styled);
        Assert.DoesNotMatch("\u001b\\[[0-9;]+m", plain);
        Assert.Contains("sikora-oregon-2025", plain, StringComparison.Ordinal);
    }
}
