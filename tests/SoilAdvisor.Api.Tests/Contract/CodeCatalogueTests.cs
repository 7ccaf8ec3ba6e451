using System.Text.RegularExpressions;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Tests.Contract;

/// <summary>The codes in docs/api.md are those in the code, both ways.</summary>
public sealed partial class CodeCatalogueTests
{
    private static readonly string Root = Path.GetFullPath(Path.Combine(MarkdownBlocks.Folder, ".."));

    // Rooms whose refusals reach a caller of the service.
    private static readonly string Sources = string.Join('\n', new[] { "Agronomy", "Planning", "Api" }
        .SelectMany(room => Directory.EnumerateFiles(Path.Combine(Root, "src", "SoilAdvisor." + room), "*.cs", SearchOption.AllDirectories))
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .Select(File.ReadAllText));

    // Built from a word: unknown-extractant and the like.
    private static readonly string[] FromWords =
    [
        .. new[] { Words.Analytes.Word, Words.Extractants.Word, Words.Detections.Word, Words.Bases.Word, Words.Units.Word, Words.SoilGroups.Word, Words.Timings.Word }
            .Concat(Enum.GetValues<Analyte>().Select(a => Words.ProceduresOf(a)?.Word).OfType<string>().Distinct())
            .Concat(["crop", "material", "cover-crop", "guide", "lime-method", "method-conversion", "metal-rule", "rule", "source", "limit", "mistake"])
            .Select(w => "unknown-" + w.Replace(' ', '-').ToLowerInvariant()),
    ];

    [Fact]
    public void Each_documented_code_exists()
    {
        var dead = Documented().Where(code => !FromWords.Contains(code) && !Sources.Contains($"\"{code}\"", StringComparison.Ordinal)).ToList();

        Assert.Empty(dead);
    }

    [Fact]
    public void Each_code_is_documented()
    {
        var formulas = SoilAdvisor.Agronomy.Working.Formulas.All.Select(f => f.Id);
        var mistakes = SoilAdvisor.Agronomy.Mistakes.CommonMistakes.All.SelectMany(m => new[] { m.Id, m.Mistaken.Id });
        var sources = Tables.Load(Tables.FindFolder(AppContext.BaseDirectory)).Sources.Keys;
        var limits = new[] { "body", "beds", "readings", "materials", "depth", "request-time", "soil-tests", "entries-per-bed", "sampled-beds", "id-letters", "text-letters" };
        var found = Pairs().Matches(Sources).Concat(Rules().Matches(Sources)).Concat(WordRefusals().Matches(Sources)).Select(m => m.Groups["code"].Value)
            .Concat(FromWords)
            .Distinct()
            .Except(formulas)
            .Except(mistakes)
            .Except(sources)
            .Except(limits);
        var missing = found.Except(Documented()).Order(StringComparer.Ordinal).ToList();

        Assert.Empty(missing);
    }

    private static HashSet<string> Documented() =>
        [.. Rows().Matches(File.ReadAllText(Path.Combine(MarkdownBlocks.Folder, "api.md"))).Select(m => m.Groups["code"].Value)];

    // A code is the first text, or the one after the place, of what makes a fault, refusal or assumption.
    [GeneratedRegex("""(?:Refused|Refusal|Refuse|Assumption|Assume|new|Fault|Problem\.Of|faults\.Add|found\.Add)\((?:\s*\[\s*new Assumption\()?\s*(?:[^"();{}]*(?:\([^()"]*(?:"[^"]*")?[^()"]*\))?[^"();{}]*,\s*)?(?:"[^"]*",\s*)?(?:"[A-Z]\w*",\s*)?"(?<code>[a-z0-9]+(?:-[a-z0-9]+)+)"\s*,""")]
    private static partial Regex Pairs();

    [GeneratedRegex("""(?:\.Else\(|\.(?:IsText|HasSome)\("[^"]*",\s*)"(?<code>[a-z0-9]+(?:-[a-z0-9]+)*)"\s*,""")]
    private static partial Regex Rules();

    [GeneratedRegex("""ReadWord\([^;]*?"(?<code>unknown-[a-z-]+)"\s*,""")]
    private static partial Regex WordRefusals();

    [GeneratedRegex("""^\| `(?<code>[a-z0-9]+(?:-[a-z0-9]+)*)` \|""", RegexOptions.Multiline)]
    private static partial Regex Rows();
}
