using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>The arithmetic on the board.</summary>
public sealed class WorkingTests
{
    // Hand arithmetic with the numbers of the worked example of the North Carolina page: 1.2 × (6.0 − 5.0) / (6.6 − 5.0) = 1.2 / 1.6 = 0.75.
    [Fact]
    public async Task A_formula_is_worked_with_the_numbers_given()
    {
        var run = await SoilCommand.Run("work", "lime-mehlich-north-carolina", "--with", "Ac=1.2", "--with", "T=6.0", "--with", "pH=5.0", "--with", "S=6.6", "--with", "RC=0");
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Contains("LR = 0.75 ton/acre", run.Results, StringComparison.Ordinal);
        Assert.Contains("(T − pH) / (S − pH)", run.Results, StringComparison.Ordinal);
        Assert.Contains("ncda-bufftab", run.Results, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Working_names_what_went_in_and_the_sample_it_came_from()
    {
        var run = await SoilCommand.Run("rate", "docs/demo/lab.csv", "--guide", "delaware-vegetables", "--working");
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Contains("Line 1:", run.Results, StringComparison.Ordinal);
        Assert.Contains("sample \"Pond Block\"", Unbroken(run.Results), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_missing_number_is_named()
    {
        var run = await SoilCommand.Run("work", "acidity-mehlich", "--with", "k=4", "--with", "S=6.6");
        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Contains("BpH", run.Talk, StringComparison.Ordinal);
    }

    private static string Unbroken(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
