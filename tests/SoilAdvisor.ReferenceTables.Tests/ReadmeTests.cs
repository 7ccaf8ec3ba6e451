using System.Text.RegularExpressions;
using SoilAdvisor.ReferenceTables.Kinds;

namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>reference-tables/README.md shows how to add a guide; what it shows works.</summary>
public sealed partial class ReadmeTests
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(RealTables.Folder, "README.md")).ReplaceLineEndings("\n");

    [Fact]
    public void Its_example_guide_can_be_copied_into_the_tables_and_loads()
    {
        using var folder = TableFolderCopy.Of(RealTables.Folder);
        var examples = Examples().Matches(Readme);
        Directory.CreateDirectory(Path.Combine(folder.Path, "guides", "example-state"));
        foreach (Match example in examples)
        {
            File.WriteAllText(Path.Combine(folder.Path, example.Groups["path"].Value), example.Groups["text"].Value);
        }

        Assert.Equal(4, examples.Count);
        Assert.Equal("", string.Join('\n', Tables.Check(folder.Path)));
        Assert.Equal(2, Tables.Load(folder.Path).Guides["example-state"].Scales.Count);
    }

    [Fact]
    public void It_names_every_file_and_every_evidence_word()
    {
        Assert.All(RowKinds.All, kind => Assert.Contains(kind.FileName, Readme, StringComparison.Ordinal));
        Assert.All(EvidenceWords.All, word => Assert.Contains($"`{word}`", Readme, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"^`(?<path>guides/example-state/[a-z.]+)`\n\n```(json|csv)\n(?<text>.*?)```$", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Examples();
}
