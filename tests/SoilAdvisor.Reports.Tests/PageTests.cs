using System.Text.RegularExpressions;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Tests;

public sealed partial class PageTests
{
    private static readonly string Html = HtmlReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography);
    private static readonly string Markdown = MarkdownReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography);

    [Fact]
    public void The_page_loads_nothing_and_runs_nothing()
    {
        Assert.DoesNotMatch("(?i)<script|<link|<img|<iframe|@import|url\\(|\\son\\w+=", Html);
        Assert.Contains("default-src 'none'", Html);
    }

    [Fact]
    public void The_page_needs_no_colour()
    {
        var colours = Colour().Matches(Html).Select(m => m.Groups[1].Value).Distinct().ToList();

        Assert.NotEmpty(colours);
        Assert.All(colours, c => Assert.InRange(Spread(c), 0, 32));
    }

    [Fact]
    public void How_to_read_a_ruler_is_said_once_also_where_one_bed_stands_alone()
    {
        Assert.Single(Regex.Matches(Html, "Its long marks are the limits that the guide prints"));
        Assert.Single(Regex.Matches(HtmlReport.Write(InventedPlan.WithBeds("one", InventedPlan.QuietBed("1")), InventedPlan.Bibliography), "Its long marks are the limits that the guide prints"));
    }

    [Fact]
    public void Every_drawing_says_its_value_limits_class_and_certainty_in_words()
    {
        var spoken = Regex.Matches(Html, "<svg [^>]*role=\"img\"[^>]*aria-label=\"([^\"]+)\"").Select(m => System.Net.WebUtility.HtmlDecode(m.Groups[1].Value)).ToList();

        Assert.Equal(Regex.Matches(Html, "<svg ").Count, spoken.Count);
        Assert.Contains("Phosphorus (P) 44 mg/kg on a ruler with the guide's limits: Optimum, from 30 to under 50. All classes: Very low: under 15 · Low: from 15 to under 30 · Optimum: from 30 to under 50 · High: from 50 to under 150 · Excessive: 150 and up.", spoken);
        Assert.Contains(spoken, s => s.Contains("pH 5.6 on a ruler", StringComparison.Ordinal) && s.Contains("How sure: Acid.", StringComparison.Ordinal) && s.Contains("The true value likely lies between 5.47 and 5.73", StringComparison.Ordinal));
    }

    [Fact]
    public void Soil_tests_stand_side_by_side_only_where_there_are_several_beds()
    {
        Assert.Contains("## The soil tests, side by side", Markdown);
        Assert.DoesNotContain("side by side", MarkdownReport.Write(InventedPlan.WithBeds("one", InventedPlan.QuietBed("1")), InventedPlan.Bibliography));
    }

    [Fact]
    public void Cations_are_information_and_carry_what_trials_found()
    {
        Assert.Contains("Nothing here is a rating, and no rate follows from it.", Markdown);
        Assert.Contains("An invented trial found no gain from chasing ratios", Markdown);
    }

    [Fact]
    public void Working_is_folded_and_closed_until_a_reader_asks()
    {
        Assert.Contains("<details>\n<summary>Bed 1A: phosphate</summary>", Html);
        Assert.DoesNotContain("<details open", Html);
    }

    [Fact]
    public void The_farm_sheet_comes_before_the_beds_and_the_sources_last()
    {
        string[] order = ["# Soil plan: ", "## Farm sheet", "### Shopping list", "### What a pound of nutrient costs", "### What the tests of your materials say", "### One check worth making", "### Mixing sheet", "### Set the spreader", "### Field sheets", "#### Sheet 1 of 1", "### What to spread, bed by bed", "## The soil tests, side by side", "### Cations, for information", "## The beds", "### Bed 1A\n\n**Spread", "#### What the soil test says", "#### What the crops need", "#### What is already coming", "#### Lime", "#### Need and supply", "#### Cover crops", "#### Organic findings", "#### Take care", "#### Warnings", "#### No answer", "#### Taken as true", "#### Working", "## Who decides", "## Sources"];
        var places = order.Select(o => Markdown.IndexOf(o, StringComparison.Ordinal)).ToList();

        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void What_holds_for_every_bed_is_said_once()
    {
        Assert.Single(Regex.Matches(Markdown, "Only the bed top is spread"));
        Assert.Single(Regex.Matches(MarkdownReport.Write(InventedPlan.WithBeds("one", InventedPlan.QuietBed("1")), InventedPlan.Bibliography), "Only the bed top is spread"));
    }

    [Fact]
    public void A_refusal_says_what_to_do_once_although_two_steps_report_it() =>
        Assert.Single(Regex.Matches(Markdown, @"No rate table for potash may be read with this guide\. \[\d+\] \*\*What to do:\*\* Choose the guide"));

    [Fact]
    public void A_finding_that_stops_the_plan_comes_first() =>
        Assert.True(Markdown.IndexOf("Do not carry out the plan", StringComparison.Ordinal) < Markdown.IndexOf("| Pass |", StringComparison.Ordinal));

    [Fact]
    public void A_cover_crop_is_never_said_to_add_phosphorus() =>
        Assert.Contains("A cover crop moves phosphorus within the soil and hands it on; it adds none.", Markdown);

    [Fact]
    public void Boron_is_shown_as_need_and_kept_out_of_the_material_plan() =>
        Assert.Contains("boron (B); not part of the material plan: see the findings", Markdown);

    [Fact]
    public void The_reader_is_told_who_decides()
    {
        Assert.Contains("Local and state nutrient, manure and water law comes first.", Markdown);
        Assert.Contains("Your certifier decides", Markdown);
    }

    [Fact]
    public void The_same_plan_gives_the_same_text() =>
        Assert.Equal(Html, HtmlReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography));

    [Fact]
    public void Without_working_there_is_no_heading_for_it()
    {
        var bed = InventedPlan.FullBed("1") with { Working = [] };

        Assert.DoesNotContain("Working", MarkdownReport.Write(InventedPlan.WithBeds("one", bed), new Dictionary<string, Source>()));
    }

    private static int Spread(string hex)
    {
        var full = hex.Length == 3 ? string.Concat(hex.Select(c => $"{c}{c}")) : hex;
        var parts = Enumerable.Range(0, 3).Select(i => Convert.ToInt32(full.Substring(i * 2, 2), 16)).ToList();
        return parts.Max() - parts.Min();
    }

    [GeneratedRegex("#([0-9a-f]{6}|[0-9a-f]{3})\\b(?=[;\\s}])")]
    private static partial Regex Colour();
}
