using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>Bad input is answered with what is wrong, where, and what to do; nothing goes to standard output.</summary>
public sealed class RefusalTests : IDisposable
{
    private const string Lab = "docs/demo/lab.csv";

    private readonly ScratchFolder folder = new();

    [Fact]
    public async Task An_unknown_crop_is_named_with_file_line_and_column_and_the_nearest_name()
    {
        var beds = folder.File("beds.csv", "bed,length (ft),width (in),soil test,crops\n1,100,30,Pond Block,broccoli\n2,100,30,Pond Block,carrot; brocoli\n");
        var run = await SoilCommand.Run("plan", Lab, "--beds", beds, "--guide", "delaware-vegetables", "--strict");
        Assert.True(run.ExitCode == 1, run.ToString());
        Assert.Equal("", run.Results);
        Assert.Contains($"{beds} line 3, column \"crops\"", run.Talk, StringComparison.Ordinal);
        Assert.Contains("broccoli", run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_refused_bed_ends_with_one_and_the_other_beds_are_planned()
    {
        var beds = folder.File("beds.csv", "bed,length (ft),width (in),soil test,crops\ngood,100,30,Pond Block,broccoli\nbad,100,30,Pond Block,brocoli\n");
        var run = await SoilCommand.Run("plan", Lab, "--beds", beds, "--guide", "delaware-vegetables");
        Assert.True(run.ExitCode == 1, run.ToString());
        Assert.Contains("good", run.Results, StringComparison.Ordinal);
        Assert.Contains("bad", run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faults_in_both_lists_are_all_said_before_anything_is_calculated()
    {
        var beds = folder.File("beds.csv", "bed,lenght (ft),width,soil test\n1,100,30,Pond Block\n");
        var materials = folder.File("materials.csv", "material;price (USD)\nfeather-meal;48,00\n");
        var run = await SoilCommand.Run("plan", Lab, "--beds", beds, "--materials", materials);
        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Equal("", run.Results);
        Assert.Contains("column 2 \"lenght (ft)\": This column is not known.", run.Talk, StringComparison.Ordinal);
        Assert.Contains("\"length (ft)\"", run.Talk, StringComparison.Ordinal);
        Assert.Contains("column 3 \"width\": The unit is missing", run.Talk, StringComparison.Ordinal);
        Assert.Contains("The column \"crops\" is missing.", run.Talk, StringComparison.Ordinal);
        Assert.Contains("separated by semicolons", run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lab_file_without_extractant_is_refused_with_its_column()
    {
        var lab = folder.File("lab.csv", "id,P (mg/kg)\nA,18\n");
        var run = await SoilCommand.Run("rate", lab);
        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Equal("", run.Results);
        Assert.Contains($"{lab} line 1, column 2", run.Talk, StringComparison.Ordinal);
        Assert.Contains("What to do:", run.Talk, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "The file is empty.")]
    [InlineData("{\"soilTests\": [", "not well-formed JSON")]
    public async Task An_empty_and_a_broken_request_file_are_told_apart(string content, string expected)
    {
        var run = await SoilCommand.Run("plan", folder.File("request.json", content), "--beds", "docs/demo/beds.csv");
        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Contains(expected, run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_server_that_does_not_answer_ends_with_three()
    {
        var run = await SoilCommand.Run("rate", Lab, "--server", "http://127.0.0.1:1");
        Assert.True(run.ExitCode == 3, run.ToString());
        Assert.Equal("", run.Results);
        Assert.Contains("http://127.0.0.1:1", run.Talk, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plam", "plan")]
    [InlineData("rate nothing.csv", "There is no such file.")]
    [InlineData("rate docs/demo/lab.csv --format pdf", "table, json")]
    [InlineData("rate docs/demo/lab.csv --units imperial", "us or metric")]
    [InlineData("rate docs/demo/lab.csv --server somewhere", "http://")]
    [InlineData("plan docs/demo/lab.csv", "--beds")]
    [InlineData("show tractors", "materials")]
    public async Task A_mistyped_command_says_what_would_be_right(string typed, string expected)
    {
        var run = await SoilCommand.Run(typed.Split(' '));
        Assert.True(run.ExitCode == 2, run.ToString());
        Assert.Equal("", run.Results);
        Assert.Contains(expected, run.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_result_file_that_is_there_is_kept_unless_force_is_given()
    {
        var result = folder.File("guides.json", "mine");
        var kept = await SoilCommand.Run("show", "lime-methods", "--output", result);
        Assert.True(kept.ExitCode == 2, kept.ToString());
        Assert.Equal("mine", await File.ReadAllTextAsync(result));

        var replaced = await SoilCommand.Run("show", "lime-methods", "--output", result, "--force");
        Assert.True(replaced.ExitCode == 0, replaced.ToString());
        Assert.Equal("", replaced.Results);
        Assert.StartsWith("{", await File.ReadAllTextAsync(result), StringComparison.Ordinal);
        Assert.Equal([result], Directory.GetFiles(folder.Path));
    }

    public void Dispose() => folder.Dispose();
}
