using System.Globalization;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

/// <summary>Every printed cell of the nitrogen tables that was read stands in ours, and is marked as read.</summary>
public sealed class NitrogenChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("nitrogen-release");

    private static NitrogenTables Tables => TablesUnderTest.Current.Nitrogen;

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_printed_figure_stands_in_the_tables(PublishedExample example)
    {
        var given = example.GivenAs<NitrogenGiven>();
        var expected = example.ExpectedAs<PrintedRange>();

        var (low, high, source) = given.What switch
        {
            "ammonium" => OfAmmonium(given),
            "organic" => OfOrganic(given),
            "course" => OfCourse(given),
            _ => OfSeason(given),
        };

        var line = string.Create(CultureInfo.InvariantCulture, $"row: {low} to {high} %, {source.SourceId}, {source.Evidence}");
        Assert.True(source.Evidence == Evidence.Seen, example.Explain(line));
        example.AgreesWith(expected.Low, low, line);
        example.AgreesWith(expected.High ?? expected.Low, high, line);
    }

    [Fact]
    public void Every_cell_of_the_Alberta_table_that_we_hold_is_checked() => Assert.Equal(
        Tables.Ammonium.Count(a => a.Retention == "alberta"),
        PublishedExamples.All.Count(e => e.File == "alberta-ammonium-table"));

    private static (double Low, double High, Citation Source) OfAmmonium(NitrogenGiven given)
    {
        var cell = Assert.Single(Tables.Ammonium, a => a.Retention == given.Id && a.How == given.How && a.WithinDays == given.Days && a.Weather == given.Weather);
        return (cell.Kept.Percent, cell.Kept.Percent, cell.Source);
    }

    private static (double Low, double High, Citation Source) OfOrganic(NitrogenGiven given)
    {
        var row = Assert.Single(Tables.Releases, r => r.Series == given.Id && r.MaterialClass == given.Class && r.DryMatterFrom == given.DryMatterFrom && r.DryMatterBelow == given.DryMatterBelow);
        var share = row.InYear(given.Year!.Value)!.Value.Percent;
        return (share, share, row.Source);
    }

    private static (double Low, double High, Citation Source) OfCourse(NitrogenGiven given)
    {
        var point = Assert.Single(Tables.Points, p => p.Course == given.Id && (p.Material ?? "") == given.Material && p.Days == given.Days && p.Temperature == given.Temperature);
        return (point.Low.Percent, point.High.Percent, point.Source);
    }

    private static (double Low, double High, Citation Source) OfSeason(NitrogenGiven given)
    {
        var row = Assert.Single(Tables.SeasonShares, s => s.Source.SourceId == given.Id && s.SeasonClass == given.Class && s.Days == given.Days && s.OfOrganic == (given.Of == "organic"));
        return ((double)row.Low!.Value, (double)row.High, row.Source);
    }

    private sealed record NitrogenGiven(
        string What,
        string Id,
        SpreadingWay? How = null,
        int? Days = null,
        SpreadingWeather? Weather = null,
        string? Class = null,
        int? Year = null,
        decimal? DryMatterFrom = null,
        decimal? DryMatterBelow = null,
        string? Material = null,
        decimal? Temperature = null,
        string? Of = null);
}
