using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static SoilAdvisor.Agronomy.Tests.Crops.InventedField;

namespace SoilAdvisor.Agronomy.Tests.Crops;

public sealed class StandCreditTests
{
    [Theory]
    [InlineData(SoilGroup.Loam, 30, 40)]
    [InlineData(null, 0, 40)]
    public void A_credit_that_depends_on_texture_is_certain_only_where_the_texture_is_known(SoilGroup? soil, double low, double high)
    {
        var credit = Assert.Single(CreditsAfter("soybean", soil).Credits);

        Assert.Equal((low, high), Range(credit));
    }

    [Fact]
    public void A_credit_not_for_sand_is_not_taken_on_sand()
    {
        var answer = CreditsAfter("soybean", SoilGroup.LoamySand);

        Assert.Empty(answer.Credits);
        Assert.Contains(answer.Assumptions, a => a.Code == "no-printed-credit");
    }

    [Fact]
    public void Of_several_printed_cases_the_least_counts_and_the_others_are_shown()
    {
        var answer = CreditsAfter("alfalfa");

        Assert.Equal((40.0, 120.0), Range(Assert.Single(answer.Credits)));
        Assert.Contains("good stand", Assert.Single(answer.Assumptions, a => a.Code == "credit-condition-open").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_credit_may_be_negative() => Assert.Equal((-10.0, 0.0), Range(Assert.Single(CreditsAfter("wheat").Credits)));

    [Fact]
    public void A_stand_that_the_table_does_not_print_earns_nothing_and_that_is_said() =>
        Assert.Contains(CreditsAfter("lettuce").Assumptions, a => a.Code == "no-printed-credit");

    [Fact]
    public void A_cover_crop_takes_its_own_row_before_that_of_its_group()
    {
        Assert.Equal((50.0, 100.0), Range(Assert.Single(After(Cover("vetch")).Credits)));
        Assert.Equal((0.0, 100.0), Range(Assert.Single(After(Cover("clover")).Credits)));
        Assert.Empty(After(Cover("rye")).Credits);
    }

    [Fact]
    public void One_stand_never_earns_two_credits() => Assert.Single(After(Cover("vetch"), Cover("vetch", 3800, 2.5m)).Credits);

    // By hand: 3800 lb is 1.9 ton; 17.5 × (2.5 − 1.5) = 17.5 lb a ton; 33.25 lb.
    [Theory]
    [InlineData(2.5, 33.25)]
    [InlineData(1.5, 0)]
    [InlineData(1.0, -16.625)]
    [InlineData(3.7, 73.15)]
    [InlineData(3.8, 76)]
    [InlineData(5, 76)]
    public void A_measured_stand_uses_the_line_and_not_the_printed_row(double percent, double expected)
    {
        var credit = Assert.Single(After(Cover("vetch", 3800, (decimal)percent)).Credits);

        Assert.Equal(expected, credit.Low.PoundsPerAcre, 9);
        Assert.Equal(credit.Low, credit.High);
        Assert.Contains("measured", credit.From, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.6, false)]
    [InlineData(1.5, true)]
    public void Below_the_lines_zero_the_amount_is_called_uncertain(double percent, bool uncertain) =>
        Assert.Equal(uncertain, After(Cover("rye", 4000, (decimal)percent)).Assumptions.Any(a => a.Code == "cover-crop-ties-up-nitrogen"));

    [Theory]
    [InlineData(0.29, true)]
    [InlineData(0.3, false)]
    [InlineData(7, false)]
    [InlineData(7.1, true)]
    public void A_nitrogen_content_that_no_plant_has_is_refused(double percent, bool refused) =>
        Assert.Equal(refused, After(Cover("rye", 4000, (decimal)percent)).Refused.Any(r => r.Refusal.Code == "nitrogen-percent-out-of-range"));

    [Fact]
    public void Working_changes_no_credit()
    {
        PreviousStand[] previous = [Cover("rye", 4000, 2.1m), new("soybean", false, null, null, null, null)];
        var sheet = new WorkingSheet();

        Assert.Equal(After(previous).Credits, NeedOf(Test(), [ClassTable], [Plant(Cabbage)], previous, sheet).Credits);
        Assert.Contains(sheet.Lines, l => l.Formula == "cover-crop-plant-available-nitrogen");
    }

    // Estimated from height: what it may bring is shown and not counted, what it may tie up is counted. 2,000 lb at 3.5 % are 35 lb, at 0.5 % −17.5 lb.
    [Theory]
    [InlineData(3.5, 0, 35)]
    [InlineData(0.5, -17.5, 0)]
    public void Nitrogen_of_an_estimated_stand_is_never_credited(double percent, double low, double high)
    {
        var answer = After(Cover("vetch", 2000, (decimal)percent) with { Estimate = new Assumption("dry-matter-from-height", "Low confidence.", Citation.OurJudgement) });

        Assert.Equal((low, high), Range(Assert.Single(answer.Credits)));
        Assert.Contains(answer.Assumptions, a => a.Code == "dry-matter-from-height");
    }

    [Fact]
    public void A_mixture_earns_its_measured_credit_under_all_its_names_and_no_printed_one()
    {
        Assert.Contains("Vetch and Rye", Assert.Single(After(Cover("vetch", 3800, 2.5m) with { Partners = ["rye"] }).Credits).From, StringComparison.Ordinal);
        Assert.Empty(After(Cover("vetch") with { Partners = ["rye"] }).Credits);
    }

    private static BedNeed After(params PreviousStand[] previous) => NeedOf(Test(), [ClassTable], [Plant(Cabbage)], previous);

    private static BedNeed CreditsAfter(string crop, SoilGroup? soil = null) =>
        NeedOf(Test(soil: soil), [ClassTable], [Plant(Cabbage)], [new PreviousStand(crop, false, null, null, null, null)]);

    private static PreviousStand Cover(string id, double? dryMatter = null, decimal? percent = null) =>
        new(id, true, dryMatter is { } pounds ? MassPerArea.FromPoundsPerAcre(pounds) : null, percent, null, null);

    private static (double Low, double High) Range(NutrientCredit credit) => (Math.Round(credit.Low.PoundsPerAcre, 9), Math.Round(credit.High.PoundsPerAcre, 9));
}
