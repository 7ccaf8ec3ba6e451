using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>The check that a co-op runs on its own guide.</summary>
public sealed class CheckTests
{
    [Fact]
    public async Task The_tables_that_ship_have_no_faults()
    {
        var run = await SoilCommand.Run("check");
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Equal("", run.Results);
        Assert.Contains("no faults", run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_fault_of_a_folder_stands_on_a_line_of_its_own_with_file_and_code()
    {
        using var folder = new ScratchFolder();
        folder.File("sources.json", "[");
        var run = await SoilCommand.Run("check", folder.Path);
        Assert.True(run.ExitCode == 1, run.ToString());
        var lines = run.Results.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.Matches(@"^\S+\(\d+\).*: .+ \[[a-z-]+\]$", line));
    }

    [Fact]
    public async Task A_folder_that_is_not_there_is_bad_input()
    {
        var run = await SoilCommand.Run("check", "no-such-folder");
        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Contains("no-such-folder", run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faulty_tables_stop_a_calculation_with_three()
    {
        using var folder = new ScratchFolder();
        folder.File("sources.json", "[");
        var run = await SoilCommand.Run(SoilCommand.Top, [("SOILADVISOR_TABLES", folder.Path)], ["rate", "docs/demo/lab.csv"]);
        Assert.True(run.ExitCode == 3, run.ToString());
        Assert.Equal("", run.Results);
        Assert.Contains("sources.json", run.Talk, StringComparison.Ordinal);
    }
}
