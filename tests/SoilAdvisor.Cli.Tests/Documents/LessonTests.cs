using SoilAdvisor.Api;
using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests.Documents;

/// <summary>Every command of the lessons is typed, and what a lesson shows below it is what it prints.</summary>
public sealed class LessonTests
{
    private const int Lessons = 6;

    public static TheoryData<string> Pages() => [.. Enumerable.Range(1, Lessons).Select(n => Path.GetFileName(Directory.GetFiles(Folder, $"{n}-*.md").Single()))];

    private static string Folder => Path.Combine(SoilCommand.Top, "docs", "lessons");

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_lesson_does_what_it_says(string page)
    {
        await using var service = Host.Build(["--urls", "http://127.0.0.1:0", "--contentRoot", SoilCommand.Top]);
        await service.StartAsync();
        var printed = "";
        var commands = 0;
        var hidden = 0;
        foreach (var (language, text) in DocumentedCommands.Fences(await File.ReadAllTextAsync(Path.Combine(Folder, page))))
        {
            if (language == "text")
            {
                Assert.Contains(Trimmed(text), Trimmed(printed), StringComparison.Ordinal);
                continue;
            }

            foreach (var line in text.Split('\n').Where(l => l.StartsWith("soil ", StringComparison.Ordinal)))
            {
                var run = await SoilCommand.Run([.. DocumentedCommands.Words(line).Skip(1), "--server", service.Urls.First()]);
                Assert.True(run.ExitCode == 0, run.ToString());
                printed = run.Results;
                commands++;
                hidden += line.Contains("--hide-answers", StringComparison.Ordinal) ? 1 : 0;
            }
        }

        Assert.True(commands >= 2 && hidden >= 1, $"{page} has {commands} commands and {hidden} work sheets.");
    }

    [Fact]
    public void The_list_names_every_lesson_and_no_other()
    {
        var named = System.Text.RegularExpressions.Regex.Matches(File.ReadAllText(Path.Combine(Folder, "README.md")), @"\]\(([^)#]+)\)").Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal);

        Assert.Equal(Directory.GetFiles(Folder, "*.md").Select(f => Path.GetFileName(f)!).Where(f => f != "README.md").Order(StringComparer.Ordinal), named);
    }

    private static string Trimmed(string text) => string.Join('\n', text.Trim().Split('\n').Select(line => line.Trim()));
}
