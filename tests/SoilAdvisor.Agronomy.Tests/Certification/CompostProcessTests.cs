using SoilAdvisor.Agronomy.Certification;

namespace SoilAdvisor.Agronomy.Tests.Certification;

/// <summary>
/// 7 CFR 205.203(c)(2)(ii) and (iii): 131 to 170 °F for 3 days in a vessel or aerated static pile, for 15 days with at least five turnings in
/// a windrow (restated by a review body and an extension page; the limits are the print's). 21 CFR 112.54(b): no ceiling, 3 days in a row
/// static, 15 days not necessarily in a row turned (from memory).
/// </summary>
public class CompostProcessTests
{
    private static readonly DateOnly First = new(2026, 5, 1);
    private static readonly HeatAsked Static = new(F(131), F(170), 3, DaysInARow.NotStated, 0);
    private static readonly HeatAsked Windrow = new(F(131), F(170), 15, DaysInARow.NotStated, 5);
    private static readonly HeatAsked StaticInARow = new(F(131), null, 3, DaysInARow.Asked, 0);
    private static readonly HeatAsked Turned = new(F(131), null, 15, DaysInARow.NotAsked, 5);

    [Theory]
    [InlineData(130, FindingState.Act)]
    [InlineData(131, FindingState.Pass)]
    [InlineData(170, FindingState.Pass)]
    [InlineData(171, FindingState.Act)]
    public void Both_limits_of_the_range_count(int degrees, FindingState state) => Assert.Equal(state, Of(Static, degrees, degrees, degrees).State);

    [Fact]
    public void Fifty_five_degrees_celsius_is_131_fahrenheit() => Assert.Equal(131, PileTemperature.FromCelsius(55).Fahrenheit);

    [Theory]
    [InlineData(2, FindingState.Act)]
    [InlineData(3, FindingState.Pass)]
    public void Three_days_are_enough_in_a_static_pile_and_two_are_not(int days, FindingState state) => Assert.Equal(state, Of(Static, Hot(days)).State);

    [Theory]
    [InlineData(14, 5, FindingState.Act)]
    [InlineData(15, 5, FindingState.Pass)]
    [InlineData(15, 4, FindingState.Act)]
    public void A_windrow_wants_fifteen_days_and_five_turnings(int days, int turnings, FindingState state)
    {
        var found = CompostProcess.Evaluate(Log(Hot(days), [.. Enumerable.Range(1, turnings).Select(i => First.AddDays(2 * i))]), Windrow);

        Assert.Equal((state, days, turnings), (found.State, found.DaysMet, found.Turnings!.Value));
    }

    [Fact]
    public void Turnings_outside_the_hot_days_do_not_count()
    {
        var found = CompostProcess.Evaluate(Log([.. Hot(15), 100, 100, 100], [.. new[] { 2, 4, 6, 8, 16 }.Select(i => First.AddDays(i))]), Windrow);

        Assert.Equal((FindingState.Act, 4), (found.State, found.Turnings!.Value));
    }

    [Fact]
    public void Five_turnings_in_a_longer_hot_time_are_for_the_certifier()
    {
        var found = CompostProcess.Evaluate(Log(Hot(20), [.. new[] { 0, 5, 10, 15, 19 }.Select(i => First.AddDays(i))]), Windrow);

        Assert.Equal(FindingState.NotDecidable, found.State);
        Assert.Contains("the certifier decides", found.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Turnings_that_nobody_wrote_down_leave_a_windrow_open()
    {
        var found = CompostProcess.Evaluate(Log(Hot(15), null), Windrow);

        Assert.Equal((FindingState.NotDecidable, null), (found.State, found.Turnings));
    }

    [Fact]
    public void A_missing_day_that_would_decide_is_named()
    {
        var found = Of(Static, 140, 140, null, 140, 100);

        Assert.Equal((FindingState.NotDecidable, First.AddDays(2)), (found.State, Assert.Single(found.Missing)));
        Assert.Contains("3 May 2026", found.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_day_that_changes_nothing_leaves_the_answer_standing()
    {
        Assert.Equal(FindingState.Pass, Of(Static, 140, 140, 140, null, 140).State);
        Assert.Equal(FindingState.Act, Of(Static, 100, null, 100, 140).State);
    }

    [Fact]
    public void Scattered_days_are_open_where_the_rule_says_nothing_and_decided_where_it_does()
    {
        int?[] scattered = [140, 140, 100, 140];

        Assert.Equal(FindingState.NotDecidable, Of(Static, scattered).State);
        Assert.Equal(FindingState.Act, Of(StaticInARow, scattered).State);
        Assert.Equal(FindingState.Pass, Of(Static with { InARow = DaysInARow.NotAsked }, scattered).State);
    }

    [Fact]
    public void One_pile_may_meet_the_produce_rule_and_miss_the_organic_one()
    {
        var log = Log([.. Hot(7), 100, .. Enumerable.Repeat<int?>(175, 8)], [.. new[] { 1, 4, 6, 9, 12 }.Select(i => First.AddDays(i))]);

        Assert.Equal(FindingState.Pass, CompostProcess.Evaluate(log, Turned).State);
        Assert.Equal(FindingState.Act, CompostProcess.Evaluate(log, Windrow).State);
    }

    [Fact]
    public void Every_reading_of_a_day_must_lie_in_the_range()
    {
        var days = new[] { new LoggedDay(First, F(131), F(171)), new LoggedDay(First.AddDays(1), F(140), F(140)), new LoggedDay(First.AddDays(2), F(140), F(140)) };

        Assert.Equal((FindingState.Act, 2), (CompostProcess.Evaluate(new(days, null), Static).State, CompostProcess.Evaluate(new(days, null), Static).DaysMet));
    }

    [Fact]
    public void An_empty_log_decides_nothing() => Assert.Equal(FindingState.NotDecidable, CompostProcess.Evaluate(new([], null), Static).State);

    [Fact]
    public void A_run_over_the_end_of_a_month_and_a_leap_day_is_one_run()
    {
        var log = new TemperatureLog([.. Enumerable.Range(0, 3).Select(i => new DateOnly(2028, 2, 28).AddDays(i)).Select(d => new LoggedDay(d, F(140), F(140)))], null);

        Assert.Equal((new DateOnly(2028, 2, 28), new DateOnly(2028, 3, 1)), (CompostProcess.Evaluate(log, Static).From!.Value, CompostProcess.Evaluate(log, Static).To!.Value));
    }

    [Fact]
    public void No_pile_is_hotter_than_300_degrees() => Assert.Throws<ArgumentOutOfRangeException>(() => PileTemperature.FromFahrenheit(301));

    private static HeatFound Of(HeatAsked asked, params int?[] degrees) => CompostProcess.Evaluate(Log(degrees, null), asked);

    private static TemperatureLog Log(int?[] degrees, DateOnly[]? turnings) => new(
        [.. degrees.Select((d, i) => (d, i)).Where(x => x.d is not null).Select(x => new LoggedDay(First.AddDays(x.i), F(x.d!.Value), F(x.d.Value)))], turnings);

    private static int?[] Hot(int days) => [.. Enumerable.Repeat<int?>(140, days)];

    private static PileTemperature F(decimal degrees) => PileTemperature.FromFahrenheit(degrees);
}
