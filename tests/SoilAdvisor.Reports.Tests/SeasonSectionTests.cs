namespace SoilAdvisor.Reports.Tests;

public sealed class SeasonSectionTests
{
    private static readonly string Report = MarkdownReport.Write(InventedPlan.Plan() with { CoverSeason = InventedSeason.Season() }, InventedPlan.Bibliography);

    [Fact]
    public void The_calendar_stands_by_month_in_letters_with_the_day()
    {
        Assert.Contains("| Bed | Cover crop | Jul 2027 | Aug 2027 | Sep 2027 |", Report, StringComparison.Ordinal);
        Assert.Matches(@"\| 1A \| Quick cover \| S 5.*M 26 \| K 11 \| P 1 \|", Report);
        Assert.Matches(@"\| bare \| bare \|  ?\|  ?\| P 1 \|", Report);
    }

    [Fact]
    public void Seed_to_buy_stands_in_whole_packs_with_its_cost() => Assert.Matches(@"\| Quick cover \| 1 \|.*1 of .*6\.50 USD", Report);

    [Fact]
    public void What_was_traded_and_why_a_bed_is_bare_is_said()
    {
        Assert.Contains("Quick cover scores 1 point less here than Slow cover.", Report, StringComparison.Ordinal);
        Assert.Contains("Stays bare.", Report, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_season_nothing_is_said_of_one() =>
        Assert.DoesNotContain("Cover crops for the season", MarkdownReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography), StringComparison.Ordinal);
}
