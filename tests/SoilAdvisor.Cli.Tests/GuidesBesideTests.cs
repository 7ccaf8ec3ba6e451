using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>Guides side by side on the terminal.</summary>
public sealed class GuidesBesideTests
{
    // Pond Block: Mehlich-3 P of 18 mg/kg lies in Delaware's lowest class (0 to 25, restated) and below Pennsylvania's optimum (30 to 50, from memory as its table says).
    [Fact]
    public async Task Neighbours_stand_in_columns_with_their_region_class_and_target()
    {
        var run = await SoilCommand.Run("rate", "docs/demo/lab.csv", "--guide", "delaware-vegetables", "--beside", "pennsylvania,new-jersey-vegetables");

        Assert.True(run.ExitCode == 0, run.ToString());
        var heading = run.Results.Split('\n').First(l => l.Contains("analyte", StringComparison.Ordinal) && l.Contains("pennsylvania", StringComparison.Ordinal));
        Assert.True(heading.IndexOf("delaware-vegetables", StringComparison.Ordinal) < heading.IndexOf("pennsylvania", StringComparison.Ordinal));
        Assert.Contains("for US-PA", Unbroken(run.Results), StringComparison.Ordinal);
        Assert.Contains("target 30 to 50 mg/kg", Unbroken(run.Results), StringComparison.Ordinal);
        Assert.Contains("P: all 3 guides that rate it put it below its target.", Unbroken(run.Results), StringComparison.Ordinal);
        Assert.All(run.Results.Split('\n').Where(l => !l.Contains("https://", StringComparison.Ordinal)), line => Assert.True(line.TrimEnd('\r').Length <= 80, line));
    }

    [Fact]
    public async Task A_misspelt_neighbour_is_named_with_the_option_it_came_from()
    {
        var run = await SoilCommand.Run("rate", "docs/demo/lab.csv", "--strict", "--guide", "delaware-vegetables", "--beside", "pensylvania");

        Assert.True(run.ExitCode == 1, run.ToString());
        Assert.Contains("--beside", run.Talk, StringComparison.Ordinal);
        Assert.Contains("pennsylvania", run.Talk, StringComparison.Ordinal);
    }

    private static string Unbroken(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
