using System.Text.RegularExpressions;

namespace SoilAdvisor.Architecture.Tests;

public sealed partial class RoomTests
{
    public static TheoryData<string> AllRooms => [.. Rooms.Allowed.Keys];

    [Theory]
    [MemberData(nameof(AllRooms))]
    public void A_room_knows_only_the_rooms_below_it(string room)
    {
        var known = Rooms.SourceFiles(room)
            .SelectMany(file => UsedRoom().Matches(File.ReadAllText(file)).Select(m => (file, uses: "SoilAdvisor." + m.Groups[1].Value)))
            .Where(u => u.uses != room && Rooms.Allowed.ContainsKey(u.uses) && !Rooms.Allowed[room].Contains(u.uses))
            .Select(u => $"{Path.GetFileName(u.file)} uses {u.uses}");

        Assert.Empty(known);
    }

    [Fact]
    public void Every_room_under_src_is_in_the_plan_of_the_house() =>
        Assert.Equal(
            Rooms.Allowed.Keys.Order(),
            Directory.GetDirectories(Path.Combine(Rooms.Root, "src")).Select(d => Path.GetFileName(d)).Order());

    [Theory]
    [InlineData("Google.OrTools", "SoilAdvisor.Planning")]
    [InlineData("Ical.Net", "SoilAdvisor.Reports")]
    [InlineData("MathNet.Numerics", "SoilAdvisor.Agronomy")]
    [InlineData("Spectre.Console", "SoilAdvisor.Cli")]
    [InlineData("FluentValidation", "SoilAdvisor.Api")]
    [InlineData("Swashbuckle", "SoilAdvisor.Api")]
    public void A_heavy_library_has_one_home(string library, string home)
    {
        var others = Rooms.Allowed.Keys
            .Where(room => room != home)
            .Where(room => File.ReadAllText(Path.Combine(Rooms.Root, "src", room, room + ".csproj")).Contains(library, StringComparison.Ordinal)
                || Rooms.SourceFiles(room).Any(f => File.ReadAllText(f).Contains("using " + library, StringComparison.Ordinal)));

        Assert.Empty(others);
    }

    [Fact]
    public void Statistics_are_at_home_in_certainty_and_sampling_and_a_plain_rating_never_loads_them()
    {
        var users = Rooms.SourceFiles("SoilAdvisor.Agronomy")
            .Where(f => File.ReadAllText(f).Contains("MathNet", StringComparison.Ordinal))
            .Select(f => Path.GetFileName(Path.GetDirectoryName(f)))
            .Distinct();
        var ratings = Rooms.SourceFiles("SoilAdvisor.Agronomy")
            .Where(f => Path.GetFileName(Path.GetDirectoryName(f)) is "Ratings" or "SoilTests")
            .Where(f => Regex.IsMatch(File.ReadAllText(f), @"\b(Certainty|Sampling)\b"));

        Assert.Subset(new HashSet<string?> { "Certainty", "Sampling" }, users.ToHashSet());
        Assert.NotEmpty(users);
        Assert.Empty(ratings);
    }

    [Theory]
    [InlineData(@"\bFile\.")]
    [InlineData(@"\bDirectory\.")]
    [InlineData(@"\bHttpClient\b")]
    [InlineData(@"\bEnvironment\.")]
    [InlineData(@"\bConsole\.")]
    [InlineData(@"\bCurrentCulture\b")]
    [InlineData(@"\bnew Random\b")]
    [InlineData(@"\bTimeProvider\b")]
    public void The_science_reads_no_file_clock_network_console_culture_or_chance(string pattern) =>
        Assert.Empty(Rooms.SourceFiles("SoilAdvisor.Agronomy").Where(f => Regex.IsMatch(File.ReadAllText(f), pattern)).Select(Path.GetFileName));

    [Theory]
    [InlineData("Helpers")]
    [InlineData("Services")]
    [InlineData("Models")]
    [InlineData("Common")]
    [InlineData("Utils")]
    public void Folders_are_subjects_of_the_trade(string word) =>
        Assert.Empty(Directory.GetDirectories(Path.Combine(Rooms.Root, "src"), word, SearchOption.AllDirectories));

    [GeneratedRegex(@"\bSoilAdvisor\.(Agronomy|ReferenceTables|Planning|Reports|Api|Cli)\b")]
    private static partial Regex UsedRoom();
}
