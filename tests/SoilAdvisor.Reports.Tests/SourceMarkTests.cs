using System.Globalization;
using System.Text.RegularExpressions;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Tests;

public sealed partial class SourceMarkTests
{
    private static readonly string Markdown = MarkdownReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography);
    private static readonly string Html = HtmlReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography);

    [Fact]
    public void Every_table_row_of_numbers_in_Markdown_ends_with_a_source()
    {
        var rows = Markdown.Split('\n').Where(l => l.StartsWith('|') && l.Any(char.IsAsciiDigit)).ToList();

        Assert.True(rows.Count > 15);
        Assert.All(rows, r => Assert.Matches(@"\| (\[\d+\*?\])+ \|$", r));
    }

    [Fact]
    public void Every_table_row_and_ruler_in_HTML_carries_a_source()
    {
        var rows = RowsAndRulers().Matches(Html).Select(m => m.Value).ToList();

        Assert.True(rows.Count > 20);
        Assert.All(rows, r => Assert.Contains("class=\"mark\"", r));
    }

    [Fact]
    public void Every_mark_leads_to_a_numbered_source_and_every_source_is_used()
    {
        var boards = string.Concat(Boards().Matches(Html).Select(m => m.Value));
        var used = Numbers(MarkLinks(), Html).Concat(Numbers(BoardMarks(), boards)).Distinct().Order();
        var listed = Numbers(ListedSources(), Html).ToList();

        Assert.Equal(Enumerable.Range(1, listed.Count), listed);
        Assert.Equal(listed, used);
    }

    [Fact]
    public void A_value_from_memory_wears_a_star_and_its_source_says_so()
    {
        Assert.Matches(@"\| Cabbage \| nitrogen \(N\) \|.*\| \[\d+\*\] \|", Markdown);
        Assert.Matches(@"- \[\d+\*\] Table 2\. From memory: not read again", Markdown);
        Assert.Matches(@"- \[\d+\] Table 1\. Seen: read", Markdown);
        Assert.Matches(@"- \[\d+\] Common practice: the trade agrees", Markdown);
        Assert.Matches(@"- \[\d+\] Ours: this report's own", Markdown);
    }

    [Fact]
    public void A_source_that_the_bibliography_lacks_is_named_as_missing()
    {
        var report = MarkdownReport.Write(InventedPlan.Plan(), new Dictionary<string, Source>());

        Assert.Contains("invented-guide (not in the bibliography of these tables)", report);
    }

    private static IEnumerable<int> Numbers(Regex mark, string text) =>
        mark.Matches(text).Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture));

    [GeneratedRegex("(?s)<tr><td.*?</tr>")]
    private static partial Regex RowsAndRulers();

    [GeneratedRegex("href=\"#source-(\\d+)\"")]
    private static partial Regex MarkLinks();

    [GeneratedRegex("(?s)<pre>.*?</pre>")]
    private static partial Regex Boards();

    [GeneratedRegex("\\[(\\d+)\\*?\\]")]
    private static partial Regex BoardMarks();

    [GeneratedRegex("<li id=\"source-(\\d+)\">")]
    private static partial Regex ListedSources();
}
