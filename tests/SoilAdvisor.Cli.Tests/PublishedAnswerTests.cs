using System.Globalization;
using System.Text.Json;
using SoilAdvisor.Cli.Tests.Processes;
using SoilAdvisor.PublishedChecks;

namespace SoilAdvisor.Cli.Tests;

/// <summary>A printed example, worked by the command as it is worked by the library and by the service.</summary>
public sealed class PublishedAnswerTests
{
    /// <summary>The manure plan of Montana State University: nitrogen per ton, then tons for nitrogen and for phosphate.</summary>
    public static TheoryData<PublishedExample> Examples => [.. PublishedExamples.All.Where(e => e.File == "montana-manure-plan")];

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task The_command_works_the_printed_answer(PublishedExample example)
    {
        var numbers = example.Given.GetProperty("symbols").EnumerateObject().SelectMany(s => new[] { "--with", string.Create(CultureInfo.InvariantCulture, $"{s.Name}={s.Value.GetRawText()}") });

        var run = await SoilCommand.Run(["work", example.Formula!, .. numbers, "--format", "json"]);

        Assert.True(run.ExitCode == 0, run.ToString());
        var result = JsonDocument.Parse(run.Results).RootElement.GetProperty("result");
        var expected = example.ExpectedAs<PrintedNumber>();
        Assert.Equal(expected.Unit, result.GetProperty("unit").GetString());
        example.AgreesWith(expected.Value, result.GetProperty("value").GetDouble(), run.Results);
    }

    [Fact]
    public async Task The_part_of_a_guides_region_is_asked_for_and_taken()
    {
        var folder = Directory.CreateTempSubdirectory();
        var file = Path.Combine(folder.FullName, "lab.csv");
        await File.WriteAllTextAsync(file, """
            id,"P (lb/acre, Mehlich-1 ICP)"
            s1,45
            """);

        // 45 lb/acre is Medium on the Coastal Plain (31-60) and High in the Piedmont (41-75): crop code 147, University of Georgia.
        var coast = await SoilCommand.Run("rate", file, "--guide", "georgia-vegetables", "--subregion", "Coastal Plain");
        var silent = await SoilCommand.Run("rate", file, "--guide", "georgia-vegetables");
        folder.Delete(recursive: true);

        Assert.True(coast.ExitCode == 0, coast.ToString());
        Assert.Contains("Medium", coast.Results, StringComparison.Ordinal);
        Assert.NotEqual(0, silent.ExitCode);
        Assert.Contains("Coastal Plain", silent.Talk, StringComparison.Ordinal);
    }
}
