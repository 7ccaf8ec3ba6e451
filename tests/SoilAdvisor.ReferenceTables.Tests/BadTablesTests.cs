using SoilAdvisor.ReferenceTables.Checks;

namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>One folder of bad tables for each code, laid over a small good folder, with every message that it must give.</summary>
public sealed class BadTablesTests
{
    public static TheoryData<string> Codes => [.. TableChecks.Codes];

    [Fact]
    public void The_good_folder_that_they_are_laid_over_is_good()
    {
        using var good = TableFolderCopy.OfGood();

        Assert.Equal("", string.Join('\n', Tables.Check(good.Path)));
        Assert.Equal(["beet", "kale"], Tables.Load(good.Path).Crops.Keys);
    }

    [Fact]
    public void Every_code_has_a_folder_and_every_folder_a_code() => Assert.Equal(
        TableChecks.Codes.Order(StringComparer.Ordinal),
        Directory.EnumerateDirectories(TableFolderCopy.BadTables).Select(d => Path.GetFileName(d)!).Where(d => d != "_good").Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_bad_folder_gives_its_messages_with_file_and_line(string code)
    {
        using var bad = TableFolderCopy.OfBad(code);

        var refused = Assert.Throws<ReferenceTableException>(() => Tables.Load(bad.Path));

        Assert.Equal(TableFolderCopy.ExpectedOf(code), string.Join('\n', refused.Problems));
        Assert.Contains(refused.Problems, p => p.Code == code);
        Assert.EndsWith(TableFolderCopy.ExpectedOf(code), refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Checking_says_what_loading_throws()
    {
        using var bad = TableFolderCopy.OfBad("scale-open-ends");

        Assert.Equal(Assert.Throws<ReferenceTableException>(() => Tables.Load(bad.Path)).Problems, Tables.Check(bad.Path));
    }

    [Theory]
    [InlineData("\"notes\": null", "\"notes\": null,\n  \"notes\": null", 15, "Duplicate property 'notes'")]
    [InlineData("\"title\": \"Invented guide\"", "\"title\": null", 3, "'Title'")]
    [InlineData("  \"title\": \"Invented guide\",\n", "", 14, "'title'")]
    [InlineData("\"notes\": null", "\"notes\": null,", 15, "trailing comma")]
    public void A_document_with_a_member_twice_empty_or_missing_is_refused_without_naming_our_types(string old, string replacement, int line, string words)
    {
        using var bad = TableFolderCopy.OfGood().Change("guides/example/guide.json", old, replacement);

        var problem = Assert.Single(Tables.Check(bad.Path));

        Assert.Equal(("guides/example/guide.json", line, "json-shape"), (problem.File, problem.Line, problem.Code));
        Assert.Contains(words, problem.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("SoilAdvisor", problem.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0,26,yes,50,yes", "0,26,no,50,yes", "scale-gap")]
    [InlineData("0,26,yes,50,yes", "0,25,no,50,yes", null)]
    [InlineData("0,26,yes,50,yes", "0,26,yes,51,no", null)]
    [InlineData("0,26,yes,50,yes", "0,26,yes,51,yes", "scale-overlap")]
    [InlineData(",75,yes,150,yes", ",75,no,150,yes", "scale-gap")]
    [InlineData(",150,no,,no", ",150,yes,,no", "scale-overlap")]
    [InlineData("150,yes,2.5,2.5", "150,no,2.5,2.5", "scale-gap")]
    public void Exactly_one_class_owns_a_limit(string old, string replacement, string? code)
    {
        using var folder = TableFolderCopy.OfGood().Change("guides/example/ratings.csv", old, replacement);

        Assert.Equal(code is null ? [] : [code], Tables.Check(folder.Path).Select(p => p.Code));
    }

    [Fact]
    public void A_printed_rise_of_the_need_is_let_through_once_it_is_explained()
    {
        using var folder = TableFolderCopy.OfBad("need-rises").Change("rate-tables/example/rate-table.json", "\"notes\": null", "\"notes\": \"monotone: printed so in the invented table\"");

        Assert.Empty(Tables.Check(folder.Path));
    }

    [Fact]
    public void Several_faults_in_several_files_are_reported_at_once_and_sorted()
    {
        using var bad = TableFolderCopy.OfGood()
            .Change("guides/example/ratings.csv", "0,26,yes,50", "0,27,yes,50")
            .Change("crops/crops.csv", "Beet,Beta", "Beet ,Beta")
            .Change("crops/crops.csv", "no-contact,,no", "no-contact,,perhaps")
            .Change("sources.json", "https://example.org", "ftp://example.org")
            .Change("rules/organic-rules.json", "\"kind\"", "\"sort\"");

        var problems = Tables.Check(bad.Path);

        Assert.Equal(
            ["crops/crops.csv(2) surrounding-blank", "crops/crops.csv(3) cell-type", "guides/example/ratings.csv(3) scale-gap", "rules/organic-rules.json(3) json-shape", "sources.json(2) link-bare"],
            problems.Select(p => $"{p.File}({p.Line}) {p.Code}"));
    }
}
