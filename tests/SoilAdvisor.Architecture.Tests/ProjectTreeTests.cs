using System.Diagnostics;
using System.Text.RegularExpressions;

namespace SoilAdvisor.Architecture.Tests;

public sealed class ProjectTreeTests
{
    private static readonly string[] TopLevel = ["DEVELOPERS.md", "Dockerfile", "README.md", "SoilAdvisor.sln", "docs", "reference-tables", "src", "tests"];

    [Fact]
    public void The_top_level_holds_only_what_the_plan_names() =>
        Assert.Equal(TopLevel, TrackedFiles().Select(f => f.Split('/')[0]).Where(n => !n.StartsWith('.')).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_test_project_is_in_the_solution()
    {
        var solution = File.ReadAllText(Path.Combine(Rooms.Root, "SoilAdvisor.sln"));

        Assert.DoesNotContain(Directory.GetFiles(Path.Combine(Rooms.Root, "tests"), "*.csproj", SearchOption.AllDirectories), p => !solution.Contains(Path.GetFileName(p), StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_reads_the_facts_that_the_tables_were_transcribed_from()
    {
        // Split so that this very file does not hold the words it looks for.
        var outside = new Regex("shared" + "/facts|/wo" + "rk/|/ro" + "ot/");

        Assert.DoesNotContain(TrackedFiles(), f => File.Exists(Path.Combine(Rooms.Root, f)) && outside.IsMatch(File.ReadAllText(Path.Combine(Rooms.Root, f))));
    }

    [Fact]
    public void No_test_is_skipped() =>
        Assert.DoesNotContain(
            TrackedFiles(),
            f => f.StartsWith("tests/", StringComparison.Ordinal) && f.EndsWith(".cs", StringComparison.Ordinal) && Regex.IsMatch(File.ReadAllText(Path.Combine(Rooms.Root, f)), @"Skip\s*=\s*"""));

    private static IEnumerable<string> TrackedFiles()
    {
        using var git = Process.Start(new ProcessStartInfo("git", "ls-files --cached --others --exclude-standard") { WorkingDirectory = Rooms.Root, RedirectStandardOutput = true })!;
        var files = git.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        git.WaitForExit();
        return files;
    }
}
