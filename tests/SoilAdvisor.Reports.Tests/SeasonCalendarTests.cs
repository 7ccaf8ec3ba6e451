using System.Text;
using Ical.Net;
using SoilAdvisor.Reports.Calendars;

namespace SoilAdvisor.Reports.Tests;

/// <summary>The calendar against RFC 5545, once by hand on the bytes and once through a library that reads it back.</summary>
public sealed class SeasonCalendarTests
{
    private static readonly DateOnly Made = new(2027, 3, 1);

    public static TheoryData<string> HostileNames =>
    [
        "1A",
        "a, b; c\\n \\; back\\slash",
        "x\r\nEND:VEVENT\r\nBEGIN:VALARM\r\nACTION:EMAIL",
        "x\nATTACH:http://example.org",
        string.Concat(Enumerable.Repeat("Ñandú 長い畝 🌱 ", 12)),
        new string('m', 300),
        "\u001b[31m \u202Egnidaer \u0000end \uD800 half",
    ];

    [Theory]
    [MemberData(nameof(HostileNames))]
    public void Every_line_ends_in_CR_LF_and_holds_at_most_75_octets(string name)
    {
        var text = Calendar(name);

        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        var lines = text[..^2].Split("\r\n");
        Assert.All(lines, l => Assert.InRange(Encoding.UTF8.GetByteCount(l), 1, 75));
        Assert.All(lines, l => Assert.DoesNotContain(l, c => c is '\r' or '\n' or '\0'));
        Assert.Equal(text, Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text)));
    }

    [Theory]
    [MemberData(nameof(HostileNames))]
    public void No_name_adds_a_component_or_a_property(string name)
    {
        var properties = Unfolded(Calendar(name)).Select(l => l.Split(':', ';')[0]).ToList();

        Assert.Equal(Unfolded(Calendar("x")).Select(l => l.Split(':', ';')[0]), properties);
        Assert.Equal(5, properties.Count(p => p == "BEGIN") - 1);
    }

    [Fact]
    public void Commas_semicolons_and_backslashes_are_escaped() =>
        Assert.Contains(Unfolded(Calendar("a, b; c\\d")), l => l == @"SUMMARY:Sow: bed a\, b\; c\\d\, Quick cover");

    [Theory]
    [MemberData(nameof(HostileNames))]
    public void A_library_reads_back_the_names_and_days_that_went_in(string name)
    {
        var events = Ical.Net.Calendar.Load(Calendar(name))!.Events;

        Assert.Equal(
            [("2027-07-05", false), ("2027-07-26", false), ("2027-08-11", false), ("2027-09-01", false), ("2027-09-01", false)],
            events.OrderBy(e => e.Start!.Date).Select(e => (e.Start!.Date.ToString("yyyy-MM-dd", null), e.Start.HasTime)));
        Assert.All(events.Take(4), e => Assert.Contains(Wording.SafeText.Of(name).Trim(), e.Summary, StringComparison.Ordinal));
    }

    [Fact]
    public void Each_event_is_a_whole_day_stamped_with_the_day_of_the_request()
    {
        var lines = Unfolded(Calendar("1A"));

        Assert.Equal(5, lines.Count(l => l == "DTSTAMP:20270301T000000Z"));
        Assert.Equal(["DTSTART;VALUE=DATE:20270705", "DTSTART;VALUE=DATE:20270726", "DTSTART;VALUE=DATE:20270811", "DTSTART;VALUE=DATE:20270901", "DTSTART;VALUE=DATE:20270901"], lines.Where(l => l.StartsWith("DTSTART", StringComparison.Ordinal)).Order());
        Assert.Equal(["DTEND;VALUE=DATE:20270706", "DTEND;VALUE=DATE:20270727", "DTEND;VALUE=DATE:20270812", "DTEND;VALUE=DATE:20270902", "DTEND;VALUE=DATE:20270902"], lines.Where(l => l.StartsWith("DTEND", StringComparison.Ordinal)).Order());
        Assert.Equal(["BEGIN:VCALENDAR", "PRODID:-//SoilAdvisor//Cover crop season//EN", "VERSION:2.0"], lines.Take(3));
    }

    [Fact]
    public void An_event_keeps_its_UID_when_its_day_moves_and_shares_it_with_no_other()
    {
        var first = Uids(SeasonCalendar.Write(InventedSeason.Season(), "Farm", Made));

        Assert.Equal(first, Uids(SeasonCalendar.Write(InventedSeason.SownOn(new DateOnly(2027, 7, 7)), "Farm", Made.AddDays(30))));
        Assert.Equal(first.Count, first.Distinct().Count());
        Assert.Empty(first.Intersect(Uids(SeasonCalendar.Write(InventedSeason.Season(), "Another farm", Made))));
        Assert.All(first, u => Assert.Matches("^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$", u));
    }

    [Fact]
    public void The_same_season_and_day_give_the_same_bytes() =>
        Assert.Equal(Calendar("1A"), Calendar("1A"));

    private static string Calendar(string name) => SeasonCalendar.Write(InventedSeason.Season(name), "Invented garden", Made);

    // RFC 5545, 3.1: a CR LF before a blank or a tab is taken away with it.
    private static IReadOnlyList<string> Unfolded(string text) =>
        text.Replace("\r\n ", "", StringComparison.Ordinal).Replace("\r\n\t", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);

    private static IReadOnlyList<string> Uids(string text) => [.. Unfolded(text).Where(l => l.StartsWith("UID:", StringComparison.Ordinal)).Select(l => l[4..])];
}
