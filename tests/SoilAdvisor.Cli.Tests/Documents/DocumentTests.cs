using SoilAdvisor.Api;
using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests.Documents;

/// <summary>Everything the documents tell a reader to type is typed here.</summary>
public sealed class DocumentTests
{
    private const string DocumentedAddress = "http://localhost:8080";

    public static TheoryData<string> Commands()
    {
        string[] documents = ["docs/getting-started.md", "docs/demo/README.md"];
        return [.. documents.SelectMany(d => DocumentedCommands.Of(File.ReadAllText(Path.Combine(SoilCommand.Top, d)))).Distinct()];
    }

    public static TheoryData<string> BedListSamples() =>
        [.. DocumentedCommands.Blocks(File.ReadAllText(Path.Combine(SoilCommand.Top, "docs/bed-list.md")), "csv")];

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task A_command_of_the_documents_does_its_work(string typed)
    {
        using var folder = new ScratchFolder();
        await using var service = typed.Contains(DocumentedAddress, StringComparison.Ordinal) ? Host.Build(["--urls", "http://127.0.0.1:0", "--contentRoot", SoilCommand.Top]) : null;
        await (service?.StartAsync() ?? Task.CompletedTask);
        var words = DocumentedCommands.Words(typed).Skip(1)
            .Select(word => word == DocumentedAddress ? service!.Urls.First() : word)
            .ToList();
        if (words.IndexOf("--output") is var option and >= 0)
        {
            words[option + 1] = folder.At(words[option + 1]);
        }

        var run = await SoilCommand.Run(words);
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.All(Directory.GetFiles(folder.Path), file => Assert.NotEqual(0, new FileInfo(file).Length));
    }

    [Theory]
    [MemberData(nameof(BedListSamples))]
    public async Task A_sample_of_the_bed_list_is_read_without_a_fault(string sample)
    {
        using var folder = new ScratchFolder();
        var file = folder.File("sample.csv", sample);
        var isBeds = sample.StartsWith("bed,", StringComparison.Ordinal);
        var run = await SoilCommand.Run(
            "plan", "docs/demo/lab.csv", "--guide", "delaware-vegetables",
            "--beds", isBeds ? file : "docs/demo/beds.csv", "--materials", isBeds ? "docs/demo/materials.csv" : file, "--format", "csv");
        Assert.NotEqual("", run.Results);
        Assert.True(run.ExitCode is 0 or 1, run.ToString());
    }
}
