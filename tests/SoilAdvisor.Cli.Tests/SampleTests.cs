using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>How many cores, and what two reports prove.</summary>
public sealed class SampleTests : IDisposable
{
    private const string Heading = "id,sampled,lab,\"K (mg/kg, Mehlich-3)\"\n";

    private readonly ScratchFolder folder = new();

    // Worked by hand: (1.645 × 40 / 20)² = 10.8, 11 cores; by the printed t table 13.
    [Fact]
    public async Task Cores_for_a_precision_are_said_in_a_sentence()
    {
        var run = await SoilCommand.Run("sample", "--cv", "40", "--precision", "20", "--confidence", "90");

        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Contains("Mix 13 cores", run.Results, StringComparison.Ordinal);
        Assert.Contains("11 are enough", run.Results.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    // Worked by hand: 140 to 165 needs 42.4 to be real; 140 to 188 needs 1.96 × √(14.0² + 18.8²) = 45.9 and moves by 48.
    [Fact]
    public async Task Two_reports_are_compared_sample_by_sample()
    {
        var before = folder.File("lab2025.csv", Heading + "North,2025-10-10,One,140\nSouth,2025-10-10,One,140\nGone,2025-10-10,One,90\n");
        var after = folder.File("lab2026.csv", Heading + "South,2026-10-12,One,188\nNorth,2026-10-12,One,165\nNew,2026-10-12,One,90\n");

        var run = await SoilCommand.Run("sample", "--before", before, "--after", after);

        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Matches(@"North\s[\s\S]*K\s+140 mg/kg\s+165 mg/kg\s+25\s+42\.4 mg/kg\s+no[\s\S]*South\s[\s\S]*K\s+140 mg/kg\s+188 mg/kg\s+48\s+45\.9 mg/kg\s+yes", run.Results);
        Assert.Contains("lab2025.csv: Gone.", run.Results.ReplaceLineEndings(""), StringComparison.Ordinal);
        Assert.Contains("lab2026.csv: New.", run.Results.ReplaceLineEndings(""), StringComparison.Ordinal);
        Assert.Contains("ferrari-vermeulen-1955", run.Results, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--precision or --cores", "--analyte", "P")]
    [InlineData("both --before and --after", "--before", "docs/demo/lab.csv")]
    public async Task What_is_missing_is_said_before_anything_is_calculated(string words, params string[] options)
    {
        var run = await SoilCommand.Run(["sample", .. options]);

        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Equal("", run.Results);
        Assert.Contains(words, run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bad_option_is_named_as_it_was_typed()
    {
        var run = await SoilCommand.Run("sample", "--analyte", "P", "--precision", "20", "--confidence", "100");

        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Contains("--confidence: The confidence is 100 %", run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_reports_without_a_common_sample_are_bad_input()
    {
        var before = folder.File("one.csv", Heading + "North,2025-10-10,One,140\n");
        var after = folder.File("two.csv", Heading + "West,2026-10-12,One,165\n");

        var run = await SoilCommand.Run("sample", "--before", before, "--after", after);

        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Contains("No sample stands in both files", run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_json_the_answers_are_a_list()
    {
        var run = await SoilCommand.Run("sample", "--cv", "40", "--cores", "15", "--format", "json");

        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Equal(15, (int)System.Text.Json.Nodes.JsonNode.Parse(run.Results)!.AsArray().Single()!["precision"]!["cores"]!);
    }

    /// <inheritdoc />
    public void Dispose() => folder.Dispose();
}
