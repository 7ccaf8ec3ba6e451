using System.Text.RegularExpressions;

namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>docs/guides.md lists the guides held, each with its institution.</summary>
public sealed partial class GuideListTests(RealTables real) : IClassFixture<RealTables>
{
    private static readonly string List = File.ReadAllText(Path.Combine(RealTables.Folder, "..", "docs", "guides.md"));

    [Fact]
    public void Every_guide_stands_in_the_list_and_no_other()
    {
        var listed = Lines().Matches(List).Select(m => (m.Groups["id"].Value, m.Groups["institution"].Value)).Order();

        Assert.Equal(real.Tables.Guides.Values.Select(g => (g.Id, g.Institution)).Order(), listed);
    }

    [GeneratedRegex(@"^\| `(?<id>[a-z0-9-]+)` \| (?<institution>[^|]+) \|", RegexOptions.Multiline)]
    private static partial Regex Lines();
}
