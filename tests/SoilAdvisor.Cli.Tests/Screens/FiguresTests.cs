using System.Text.Json;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Tests.Screens;

/// <summary>Amounts as they are printed, on both sides of each change of form. Expected values are hand arithmetic: 16 oz are 1 lb.</summary>
public sealed class FiguresTests
{
    [Theory]
    [InlineData("0", "lb", "none")]
    [InlineData("0.5", "lb", "8 oz")]
    [InlineData("0.96", "lb", "15.4 oz")]
    [InlineData("0.97", "lb", "1 lb")]
    [InlineData("1", "lb", "1 lb")]
    [InlineData("14.2", "lb", "14 lb 3 oz")]
    [InlineData("99.96", "lb", "99 lb 15 oz")]
    [InlineData("100", "lb", "100 lb")]
    [InlineData("2469.4", "lb", "2,469 lb")]
    [InlineData("0.9994", "kg", "999 g")]
    [InlineData("1", "kg", "1 kg")]
    [InlineData("6.4312", "kg", "6.43 kg")]
    public void A_weight_is_read_on_the_scale(string value, string unit, string expected) => Assert.Equal(expected, Figures.Weight(Quantity(value, unit)));

    [Theory]
    [InlineData("0.3154", "cubic-foot", "0.32 cubic foot")]
    [InlineData("1", "pint", "1 pint")]
    [InlineData("3.96", "pint", "4 pints")]
    [InlineData("4.1", "pint", "4 pints")]
    [InlineData("4.13", "pint", "4.25 pints")]
    [InlineData("11.46", "cubic-foot", "11.5 cubic feet")]
    [InlineData("0", "pint", "weigh it")]
    public void A_volume_is_as_exact_as_its_size_asks(string value, string unit, string expected) => Assert.Equal(expected, Figures.Measure(Quantity(value, unit)));

    [Fact]
    public void An_amount_without_a_published_density_is_weighed() => Assert.Equal("weigh it", Figures.Measure(default));

    [Theory]
    [InlineData("0.0514", "0.0514 lb/acre")]
    [InlineData("90.875", "90.9 lb/acre")]
    [InlineData("999.4", "999 lb/acre")]
    [InlineData("3063.829787", "3,064 lb/acre")]
    public void An_amount_keeps_three_digits_and_every_whole_pound(string value, string expected) => Assert.Equal(expected, Figures.Amount(Quantity(value, "lb/acre")));

    [Theory]
    [InlineData("150", "200", "150 to 200")]
    [InlineData("87.1", "87.1", "87.1")]
    public void A_range_of_one_number_is_printed_as_one(string low, string high, string expected) =>
        Assert.Equal(expected, Figures.Range(Json($$"""{"low": {{low}}, "high": {{high}}, "unit": "lb/acre"}""")));

    private static JsonElement Quantity(string value, string unit) => Json($$"""{"value": {{value}}, "unit": "{{unit}}"}""");

    private static JsonElement Json(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
