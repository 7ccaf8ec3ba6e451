using System.Globalization;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using Xunit.Abstractions;

namespace SoilAdvisor.PublishedChecks;

public sealed class LimitChecks(ITestOutputHelper output)
{
    private static readonly Lazy<IReadOnlyList<RatedLimit>> Rated = new(() => [.. LimitTable.All.SelectMany(t => t.Rate())]);

    public static TheoryData<string> Tables => [.. LimitTable.All.Select(t => t.ToString())];

    public static TheoryData<string> Guides => [.. TablesUnderTest.Current.Guides.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_value_beside_a_limit_lies_in_the_class_that_was_typed_for_it(string table)
    {
        var rows = Rated.Value.Where(r => r.Table.ToString() == table).ToList();

        Assert.NotEmpty(rows);
        Assert.True(rows.All(r => r.Agrees), string.Join(Environment.NewLine, rows.Where(r => !r.Agrees)));
    }

    [Theory]
    [MemberData(nameof(Guides))]
    public void Both_sides_of_every_phosphorus_potassium_and_index_limit_of_a_guide_are_typed(string guide)
    {
        var held = TablesUnderTest.Current.Guides[guide];
        var missing = held.Scales.Where(s => s.Analyte is Analyte.P or Analyte.K).Concat(held.Indices.SelectMany(i => i.Scales)).SelectMany(Untyped);

        Assert.True(!missing.Any(), $"{guide}: type these in limits/published or limits/from-memory, from the publication and not from the table: {Environment.NewLine}{string.Join(Environment.NewLine, missing)}");
    }

    [Fact]
    public void A_published_row_never_meets_a_class_from_memory_nor_a_row_from_memory_a_class_called_seen()
    {
        var crossed = Rated.Value.Where(r => (r.Table.Evidence, r.Class?.Source.Evidence) is
            (LimitEvidence.Published, Evidence.FromMemory) or (LimitEvidence.FromMemory, Evidence.Seen));

        Assert.True(!crossed.Any(), string.Join(Environment.NewLine, crossed.Select(r => $"{r} The table calls this class {r.Class!.Source.Evidence}.")));
    }

    [Fact]
    public void Published_rows_never_speak_of_memory() =>
        Assert.DoesNotContain(LimitTable.All.Where(t => t.Evidence == LimitEvidence.Published), t => new[] { t.Source, t.Locator, t.Read, t.Note }.Any(text =>
            text is not null && (text.Contains("memory", StringComparison.OrdinalIgnoreCase) || text.Contains("recalled", StringComparison.OrdinalIgnoreCase))));

    [Fact]
    public void Every_table_names_its_publication_the_place_in_it_and_what_was_read() =>
        Assert.DoesNotContain(LimitTable.All, t => string.IsNullOrWhiteSpace(t.Source) || string.IsNullOrWhiteSpace(t.Locator) || string.IsNullOrWhiteSpace(t.Read));

    [Fact]
    public void No_row_is_counted_twice() =>
        Assert.Empty(LimitTable.All.SelectMany(t => t.Rows, (t, r) => $"{t.Guide} {t.Given} {r.Value}").GroupBy(row => row).Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void Published_rows_are_counted_apart_from_rows_that_are_only_recalled()
    {
        var counts = LimitTable.All
            .GroupBy(t => (t.Evidence, t.Guide))
            .Select(g => (g.Key.Evidence, g.Key.Guide, Rows: g.Sum(t => t.Rows.Count)))
            .ToList();

        foreach (var evidence in Enum.GetValues<LimitEvidence>())
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{LimitTable.FolderOf(evidence)}: {counts.Where(c => c.Evidence == evidence).Sum(c => c.Rows)}"));
            foreach (var count in counts.Where(c => c.Evidence == evidence))
            {
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {count.Guide}: {count.Rows}"));
            }
        }

        Assert.True(counts.Where(c => c.Evidence == LimitEvidence.Published).Sum(c => c.Rows) >= 800);
        Assert.Equal(LimitTable.All.Sum(t => t.Rows.Count), counts.Sum(c => c.Rows));
    }

    /// <summary>The limits between two neighboring classes of a scale that no typed row touches from one side, or exactly where the scale is continuous.</summary>
    private static IEnumerable<string> Untyped(RatingScale scale)
    {
        var rows = Rated.Value.Where(r => ReferenceEquals(r.Scale, scale) && IsAsPrinted(r.Row.Value)).ToList();
        for (var i = 0; i + 1 < scale.Classes.Count; i++)
        {
            var below = rows.Where(r => r.ClassIndex == i).ToList();
            var above = rows.Where(r => r.ClassIndex == i + 1).ToList();
            var isTyped = below.Any(b => above.Any(a => IsNeighbor(b, a)));
            var isMet = scale.PrintedDecimals is not null || below.Concat(above).Any(r => r.Row.Value == scale.UpperOf(i, r.Cec));
            if (!isTyped || !isMet)
            {
                yield return string.Create(
                    CultureInfo.InvariantCulture,
                    $"{scale.Index ?? Words.Analytes.IdOf(scale.Analyte)} by {scale.Method} in {Words.Units.IdOf(scale.Unit)}{(scale.CropGroup is { } crop ? $", {crop}" : "")}{(scale.Subregion is { } place ? $", {place}" : "")}{(scale.SoilGroups.Count > 0 ? $", {string.Join(" ", scale.SoilGroups)}" : "")}: between {scale.Classes[i].Name} and {scale.Classes[i + 1].Name}{(isTyped ? ", exactly at the limit" : "")}");
            }
        }

        bool IsAsPrinted(decimal value) => scale.PrintedDecimals is not { } decimals || decimal.Round(value, decimals) == value;

        bool IsNeighbor(RatedLimit lower, RatedLimit upper) =>
            lower.Cec == upper.Cec && upper.Row.Value - lower.Row.Value <= Step(upper.Row.Value);

        decimal Step(decimal value) => scale.PrintedDecimals switch
        {
            0 => 1m,
            1 => 0.1m,
            2 => 0.01m,
            3 => 0.001m,
            _ => scale.Index is null ? Math.Max(0.1m, value / 100m) : value / 20m,
        };
    }
}
