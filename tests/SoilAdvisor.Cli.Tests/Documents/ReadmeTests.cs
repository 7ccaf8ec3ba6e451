using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests.Documents;

/// <summary>The first thing a newcomer types, and what the README says it answers.</summary>
public sealed class ReadmeTests(DemoRuns demo) : IClassFixture<DemoRuns>
{
    private const string Before = "dotnet run --project src/SoilAdvisor.Cli -- ";

    private static readonly string Readme = File.ReadAllText(Path.Combine(SoilCommand.Top, "README.md"));

    [Fact]
    public void The_main_job_is_the_demo_that_all_tests_look_at()
    {
        var typed = DocumentedCommands.Blocks(Readme, "sh").Select(b => b.Trim()).Single(b => b.StartsWith(Before, StringComparison.Ordinal));

        // The date is the day it is typed, so the tests give one.
        Assert.Equal(DemoRuns.Plan.Where(word => word is not ("--date" or "2026-11-24")), DocumentedCommands.Words(typed[Before.Length..]));
    }

    [Fact]
    public void The_excerpt_is_what_the_main_job_prints()
    {
        var excerpt = Trimmed(DocumentedCommands.Blocks(Readme, "text").Single());

        Assert.NotEmpty(excerpt);
        Assert.Contains(excerpt, Trimmed(demo.In("table").Results), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_page_the_readme_names_exists()
    {
        var named = System.Text.RegularExpressions.Regex.Matches(Readme, @"\]\(([^)#]+)\)").Select(m => m.Groups[1].Value);

        Assert.All(named, page => Assert.True(File.Exists(Path.Combine(SoilCommand.Top, page)), $"README names {page}."));
    }

    private static string Trimmed(string text) => string.Join('\n', text.Trim().Split('\n').Select(line => line.TrimEnd()));
}
