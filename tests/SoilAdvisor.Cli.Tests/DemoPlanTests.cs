using System.Text.Json;
using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>The main job on the demo, as a grower runs it.</summary>
public sealed class DemoPlanTests(DemoRuns demo) : IClassFixture<DemoRuns>
{
    [Theory]
    [InlineData("table")]
    [InlineData("markdown")]
    [InlineData("html")]
    [InlineData("csv")]
    [InlineData("json")]
    public void One_command_gives_the_plan_in_every_format_and_says_nothing_else(string format)
    {
        var run = demo.In(format);
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Equal("", run.Talk);
        Assert.DoesNotContain('\u001b', run.Results);
    }

    [Theory]
    [InlineData("table")]
    [InlineData("markdown")]
    [InlineData("html")]
    [InlineData("csv")]
    [InlineData("json")]
    public void Every_format_names_every_bed_and_marks_the_garden_as_invented(string format)
    {
        var results = demo.In(format).Results;
        foreach (var bed in File.ReadLines(Path.Combine(SoilCommand.Top, "docs/demo/beds.csv")).Skip(2).Select(line => line.Split(',')[0]))
        {
            Assert.Contains(bed, results, StringComparison.Ordinal);
        }

        Assert.Contains("invented", results, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Every_format_begins_as_its_kind_does()
    {
        Assert.StartsWith("# ", demo.In("markdown").Results, StringComparison.Ordinal);
        Assert.StartsWith("<!doctype html>", demo.In("html").Results, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(',', demo.In("csv").Results.Split('\n')[0]);
        using var json = JsonDocument.Parse(demo.In("json").Results);
        Assert.Equal(24, json.RootElement.GetProperty("beds").GetArrayLength());
    }

    [Fact]
    public void The_plain_table_stays_within_eighty_columns_and_breaks_no_link()
    {
        var tooLong = demo.In("table").Results.Split('\n').Where(line => line.TrimEnd().Length > 80).ToList();
        Assert.All(tooLong, line => Assert.Matches(@"^ +https?://\S+$", line));
    }

    [Fact]
    public void The_terminal_and_the_page_say_where_phosphorus_is_heading()
    {
        Assert.Matches(@"Phosphorus, now [\d.]+ mg/kg,\s+after\s+5\s+seasons", demo.In("table").Results);
        Assert.Contains("Phosphorus and potassium over the years", demo.In("markdown").Results, StringComparison.Ordinal);
    }

    // Hand arithmetic from the guide's printed limits (Mehlich-3 P, mg/kg: low 0-25, medium 26-50, optimum 51-100, excessive above 100).
    [Theory]
    [InlineData("A1", "Low", "below")]
    [InlineData("B1", "Medium", "below")]
    [InlineData("C1", "Excessive", "stop")]
    public void Phosphorus_of_each_block_falls_into_the_class_that_the_guide_prints(string bed, string expected, string standing)
    {
        var rating = Bed(bed).GetProperty("ratings").EnumerateArray().Single(r => r.GetProperty("analyte").GetString() == "P");
        Assert.Equal(expected, rating.GetProperty("class").GetString());
        Assert.Equal(standing, rating.GetProperty("standing").GetString());
    }

    [Fact]
    public void A_bed_after_vetch_on_rich_soil_needs_nothing_and_says_so_first()
    {
        var bed = Bed("C1");
        Assert.Empty(bed.GetProperty("materials").EnumerateArray());
        Assert.Contains("Nothing to spread", bed.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains("Nothing to spread", demo.In("table").Results, StringComparison.Ordinal);
    }

    [Fact]
    public void A_crop_without_rates_is_refused_for_those_nutrients_and_not_for_the_bed()
    {
        var bed = Bed("B8");
        Assert.Equal("partly", bed.GetProperty("state").GetString());
        Assert.Contains("kale", demo.In("table").Results, StringComparison.OrdinalIgnoreCase);
    }

    private JsonElement Bed(string id) =>
        JsonDocument.Parse(demo.In("json").Results).RootElement.GetProperty("beds").EnumerateArray().Single(b => b.GetProperty("bed").GetString() == id);
}
