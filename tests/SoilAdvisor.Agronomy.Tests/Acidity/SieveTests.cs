using SoilAdvisor.Agronomy.Acidity.Stones;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public class SieveTests
{
    private static CumulativeSieves Cumulative { get; } = CumulativeSieves.Of([(8, 98), (40, 70), (60, 55)]).Value;

    private static SieveClasses Classes { get; } = SieveClasses.Of([new(null, 8, 2), new(8, 40, 28), new(40, 60, 15), new(60, null, 55)]).Value;

    [Theory]
    [InlineData(8, 40, 28)]
    [InlineData(40, 60, 15)]
    [InlineData(8, 60, 43)]
    public void The_two_ways_of_reporting_one_stone_say_the_same(int passing, int retained, double percent)
    {
        Assert.Equal(percent, Cumulative.Between(passing, retained)!.Value.Percent, 9);
        Assert.Equal(percent, Classes.Between(passing, retained)!.Value.Percent, 9);
        Assert.Equal(Cumulative.Passing(60), Classes.Passing(60));
        Assert.Equal(Cumulative.Passing(8), Classes.Passing(8));
    }

    [Fact]
    public void A_sieve_that_was_not_used_is_not_guessed()
    {
        Assert.Null(Cumulative.Passing(20));
        Assert.Null(Classes.Passing(20));
        Assert.Null(Classes.Between(8, 20));
    }

    [Fact]
    public void What_passes_a_finer_sieve_whole_passes_a_coarser_one()
    {
        var fine = CumulativeSieves.Of([(20, 100), (60, 80)]).Value;

        Assert.Equal(100, fine.Passing(4)!.Value.Percent);
        Assert.Null(fine.Passing(40));
    }

    [Fact]
    public void Figures_by_class_given_as_passing_are_refused()
    {
        var answer = CumulativeSieves.Of([(8, 2), (40, 28), (60, 55)]);

        Assert.Equal("sieve-analysis", answer.Reason.Code);
        Assert.Contains("sieveClasses", answer.Reason.Suggestion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(7.0, false, false)]
    [InlineData(8.0, true, true)]
    [InlineData(9.0, true, true)]
    [InlineData(10.0, true, false)]
    [InlineData(11.0, true, true)]
    [InlineData(12.0, true, true)]
    [InlineData(12.1, false, false)]
    public void Classes_add_up_to_100_or_it_is_said_or_they_are_refused(double finest, bool read, bool said)
    {
        var answer = SieveClasses.Of([new(null, 8, 90), new(8, null, (decimal)finest)]);

        Assert.Equal(read, answer.IsGiven);
        Assert.True(!read || answer.Value.Noticed.Count > 0 == said);
    }

    [Fact]
    public void Classes_that_do_not_join_are_refused() =>
        Assert.Equal("sieve-analysis", SieveClasses.Of([new(8, 20, 40), new(40, null, 60)]).Reason.Code);

    [Fact]
    public void Classes_without_the_finest_are_refused() =>
        Assert.Equal("sieve-analysis", SieveClasses.Of([new(null, 8, 40), new(8, 60, 60)]).Reason.Code);
}
