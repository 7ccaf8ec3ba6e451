using System.Text;
using System.Text.RegularExpressions;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Tests;

/// <summary>Ids and names come from strangers. Whatever they write, the report keeps its shape.</summary>
public sealed partial class HostileTextTests
{
    public static TheoryData<string> HostileTexts =>
    [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='alert(1)",
        "</title></style><svg onload=alert(1)>",
        "&lt;script&gt; &#60;b&#62;",
        "| a | b |\n| --- | --- |",
        "`code` ```fence``` **bold** _it_ [x](javascript:alert(1)) ![i](x)",
        "# heading\n- list\n1. one",
        "=HYPERLINK(\"http://example.org\",\"x\")",
        "+1+1\r\n@SUM(A1)",
        "\u001b[31mred\u0007 \u202Egnidaer \u0000end \uD800 half",
        "{{7*7}} ${jndi} %0d%0a",
    ];

    [Theory]
    [MemberData(nameof(HostileTexts))]
    public void Hostile_text_adds_no_tag_and_no_attribute_to_the_page(string text)
    {
        var page = HtmlReport.Write(Hostile(text), InventedPlan.Bibliography);

        Assert.Equal(Shape(HtmlReport.Write(Hostile("x"), InventedPlan.Bibliography)), Shape(page));
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        AssertNoCommands(page);
    }

    [Theory]
    [MemberData(nameof(HostileTexts))]
    public void Hostile_text_adds_no_row_column_heading_or_tag_to_Markdown(string text)
    {
        var report = MarkdownReport.Write(Hostile(text), InventedPlan.Bibliography);
        var lines = OutsideBoards(report).Split('\n');
        var plain = OutsideBoards(MarkdownReport.Write(Hostile("x"), InventedPlan.Bibliography)).Split('\n');

        Assert.Equal(plain.Length, lines.Length);
        Assert.Equal(plain.Select(Start), lines.Select(Start));
        Assert.Equal(plain.Select(l => UnescapedPipe().Count(l)), lines.Select(l => UnescapedPipe().Count(l)));
        Assert.DoesNotMatch(@"(?<!\\)<[A-Za-z/!?]", OutsideBoards(report));
        Assert.DoesNotMatch(@"(?<!\\)\]\(", OutsideBoards(report));
        AssertNoCommands(report);
    }

    [Theory]
    [MemberData(nameof(HostileTexts))]
    public void Hostile_text_is_one_harmless_cell_in_CSV(string text)
    {
        var rows = Csv.Read(CsvReport.Write(Hostile(text), InventedPlan.Bibliography));

        Assert.All(rows, r => Assert.Equal(CsvReport.Columns.Count, r.Count));
        Assert.Equal(Csv.Read(CsvReport.Write(Hostile("x"), InventedPlan.Bibliography)).Count, rows.Count);
        Assert.All(rows.SelectMany(r => r), cell => Assert.DoesNotMatch(@"^\s*[=+\-@]", cell));
        AssertNoCommands(string.Concat(rows.SelectMany(r => r)));
    }

    [Fact]
    public void Text_that_means_no_harm_is_printed_as_it_is()
    {
        var page = HtmlReport.Write(Hostile("Bed Ñandú < 5 & more"), InventedPlan.Bibliography);

        Assert.Contains("Bed Ñandú &lt; 5 &amp; more", page);
        Assert.Contains("Bed Ñandú < 5 & more", MarkdownReport.Write(Hostile("Bed Ñandú < 5 & more"), InventedPlan.Bibliography));
    }

    [Fact]
    public void Only_a_web_address_becomes_a_link()
    {
        var page = HtmlReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography);

        Assert.Contains("href=\"https://example.org/materials?a=1&amp;b=2\"", page);
        Assert.DoesNotContain("href=\"javascript", page);
    }

    private static FarmPlan Hostile(string text)
    {
        var full = InventedPlan.FullBed(text);
        var bed = full with
        {
            Summary = text,
            Warnings = [text],
            Bed = full.Bed with { AreaShown = text, SoilTest = full.Bed.SoilTest with { Id = text, Lab = text } },
            Refused = [("/x", new Refusal("code", text, text))],
            Shortfalls = [full.Shortfalls[0] with { WhatWouldMeetIt = text }],
            Applications = [.. full.Applications.Select(a => a with { When = text, Purpose = text })],
            Working = [.. full.Working.Select(l => l with { Section = text, Title = text, ResultText = l.ResultText is null ? null : text })],
        };
        return InventedPlan.WithBeds(text, bed, InventedPlan.RefusedBed(text));
    }

    private static string Shape(string page) => string.Join('\n', Tag().Matches(page).Select(t => AttributeValue().Replace(t.Value, "=\"\"")));

    private static string Start(string line) => line.Length == 0 ? "" : line[0] is '#' or '|' or '-' or '`' or '>' ? line[..1] : "text";

    private static string OutsideBoards(string report) => Board().Replace(report, "");

    private static void AssertNoCommands(string text)
    {
        Assert.DoesNotContain(text, c => c is '\u001b' or '\u0007' or '\u0000' or '\u202E');
        Assert.Equal(text, Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text)));
    }

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("=\"[^\"]*\"")]
    private static partial Regex AttributeValue();

    [GeneratedRegex(@"(?<!\\)\|")]
    private static partial Regex UnescapedPipe();

    [GeneratedRegex("(?s)(`{3,})text\\n.*?\\n\\1\\n")]
    private static partial Regex Board();
}
