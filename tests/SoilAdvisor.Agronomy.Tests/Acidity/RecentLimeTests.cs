using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using static SoilAdvisor.Agronomy.Tests.Acidity.InventedLime;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public sealed class RecentLimeTests
{
    private static readonly DateOnly Sampled = new(2026, 6, 15);

    [Theory]
    [InlineData("2026-01-15", 5)]
    [InlineData("2026-06-15", 0)]
    [InlineData("2026-07-01", 0)]
    [InlineData("2025-06-15", 12)]
    [InlineData("2026-05-31", 0.5)]
    public void Months_are_whole_months_and_the_part_of_the_next(string spread, double months) =>
        Assert.Equal(months, new RecentLime(default, DateOnly.Parse(spread, System.Globalization.CultureInfo.InvariantCulture), null).MonthsUntil(Sampled), 1);

    // Without credit 0.80 ton. Half a ton five months before: mineral 0.5 x (1 - 0.40) = 0.30 left, organic 0.5 x (1 - 0.80) = 0.10 left.
    [Theory]
    [InlineData("2026-01-15", HumicSoilClass.Mineral, 0.50)]
    [InlineData("2026-01-15", HumicSoilClass.MineralOrganic, 0.70)]
    [InlineData("2026-01-15", HumicSoilClass.Organic, 0.70)]
    [InlineData("2026-01-15", null, 0.50)]
    [InlineData("2026-06-20", HumicSoilClass.Mineral, 0.30)]
    [InlineData("2025-06-14", HumicSoilClass.Mineral, 0.80)]
    public void What_has_not_reacted_is_taken_off(string spread, HumicSoilClass? soil, double tons) =>
        Assert.Equal(tons, (double)Ask(spread, soil, Sampled, 0.5).PrintedValue, 6);

    [Fact]
    public void Much_recent_lime_leaves_none_and_never_less() => Assert.True(Ask("2026-06-15", HumicSoilClass.Mineral, Sampled, 3).Lime.IsZero);

    [Fact]
    public void Without_the_day_of_sampling_nothing_is_taken_off_and_that_is_said()
    {
        var lime = Ask("2026-01-15", HumicSoilClass.Mineral, null, 0.5);

        Assert.Equal(0.80, (double)lime.PrintedValue, 6);
        Assert.Contains(lime.Assumptions, a => a.Code == "recent-lime" && a.Text.Contains("Give the day", StringComparison.Ordinal));
    }

    [Fact]
    public void A_method_without_a_credit_says_so()
    {
        var recent = new RecentLime(MassPerArea.FromPoundsPerAcre(1000), new(2026, 1, 15), null);

        var lime = LimeRequirementCalculation.For(Soil(5.5m, 6.4m, Procedure.BufferSmp), Target(6.5m), [InventedLime.Table], null, null, [], null, recent).Value;

        Assert.Equal(1500, lime.Rate.PoundsPerAcre, 9);
        Assert.Contains(lime.Assumptions, a => a.Code == "recent-lime");
    }

    private static LimeRequirement Ask(string spread, HumicSoilClass? soil, DateOnly? sampled, double tons) => LimeRequirementCalculation.For(
        Soil(5.4m, 6.2m, Procedure.BufferMehlich) with { Sampled = sampled },
        Target(6.0m),
        [NorthCarolina],
        null,
        null,
        [],
        null,
        new RecentLime(MassPerArea.FromPoundsPerAcre(tons * 2000), DateOnly.Parse(spread, System.Globalization.CultureInfo.InvariantCulture), soil)).Value;
}
