using CsCheck;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Reports.Rulers;

namespace SoilAdvisor.Reports.Tests;

/// <summary>All limits here are invented.</summary>
public sealed class RulerTests
{
    private static readonly RatingScale Phosphorus = InventedPlan.Guide.Scales[0];
    private static readonly RatingScale WholeSteps = InventedPlan.Guide.Scales[1];
    private static readonly RatingScale Acidity = InventedPlan.Guide.Scales[2];

    private static readonly RatingScale WithGap = InventedPlan.Scale(Analyte.Zn, Extractant.Dtpa, ReportingUnit.MilligramsPerKilogram, null,
        ("Low", Standing.Information, 1m, 2m), ("High", Standing.Information, 5m, 9m));

    [Fact]
    public void The_marks_are_the_limits_of_the_guide()
    {
        Assert.Equal([0, 15, 30, 50, 150], Ruler.Of(Rated(Phosphorus, Amount.Measured(20m))).Marks.Select(m => m.Limit));
        Assert.Equal([0, 175, 350], Ruler.Of(Rated(WholeSteps, Amount.Measured(20m))).Marks.Select(m => m.Limit));
        Assert.Equal([1, 2, 5, 9], Ruler.Of(Rated(WithGap, Amount.Measured(6m))).Marks.Select(m => m.Limit));
    }

    [Fact]
    public void A_pH_ruler_starts_and_ends_open()
    {
        var ruler = Ruler.Of(Rated(Acidity, Amount.Measured(6.4m)));

        Assert.Equal([6, 7], ruler.Marks.Select(m => m.Limit));
        Assert.True(ruler.IsOpenAtStart);
        Assert.True(ruler.IsOpenAtEnd);
    }

    [Fact]
    public void A_gap_of_a_reference_range_has_a_stretch_without_a_name()
    {
        var ruler = Ruler.Of(Rated(WithGap, Amount.Measured(6m)));

        Assert.Equal(["Low", "", "High"], ruler.Stretches.Select(s => s.Name));
        Assert.False(ruler.IsOpenAtStart);
        Assert.False(ruler.IsOpenAtEnd);
    }

    [Fact]
    public void Less_than_five_lies_anywhere_from_the_start_to_five()
    {
        var ruler = Ruler.Of(Rated(Phosphorus, Amount.Below(5m)));
        var third = ruler.Stretches[0].End / 3;

        Assert.Equal(0, ruler.From);
        Assert.Equal(third, ruler.To, 12);
    }

    [Fact]
    public void More_than_a_number_lies_anywhere_from_it_to_the_end()
    {
        var ruler = Ruler.Of(Rated(Phosphorus, Amount.Above(150m)));

        Assert.Equal(ruler.Marks[^1].Place, ruler.From);
        Assert.Equal(1, ruler.To);
    }

    [Theory]
    [InlineData("14.999", "Very low")]
    [InlineData("15", "Low")]
    [InlineData("15.001", "Low")]
    [InlineData("149.999", "High")]
    [InlineData("150", "Excessive")]
    [InlineData("0", "Very low")]
    [InlineData("99999", "Excessive")]
    public void A_value_stands_in_the_stretch_of_its_class(string value, string name)
    {
        var ruler = Ruler.Of(Rated(Phosphorus, Amount.Measured(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture))));
        var found = Assert.Single(ruler.Stretches, s => s.IsFound);

        Assert.Equal(name, found.Name);
        Assert.InRange(ruler.From, found.Start, found.End);
    }

    [Fact]
    public void Where_whole_steps_are_printed_the_rounded_value_is_drawn()
    {
        Assert.Equal(Ruler.Of(Rated(WholeSteps, Amount.Measured(175m))).From, Ruler.Of(Rated(WholeSteps, Amount.Measured(174.6m))).From);
        Assert.True(Ruler.Of(Rated(WholeSteps, Amount.Measured(174.4m))).From < Ruler.Of(Rated(WholeSteps, Amount.Measured(175m))).From);
    }

    [Fact]
    public void A_larger_value_never_stands_further_left() =>
        Gen.Int[0, 149].SelectMany(a => Gen.Int[a, 149].Select(b => (a, b))).Sample(pair =>
            Place(pair.a) <= Place(pair.b) && Place(pair.a) is >= 0 and <= 1);

    [Fact]
    public void Small_marks_stay_between_the_limits_of_their_stretch() =>
        Gen.Double[0.001, 1000].SelectMany(low => Gen.Double[0.001, 1000].Select(width => new Stretch(low, low + width, 0.2, 0.6, "", false))).Sample(stretch =>
            stretch.SmallMarks.Count() is >= 1 and <= 6 && stretch.SmallMarks.All(m => m > stretch.Start && m < stretch.End));

    [Theory]
    [InlineData("Very low", "Very low")]
    [InlineData("Below optimum", "Below|optimum")]
    [InlineData("Needs improvement soon", "Needs|improvement|soon")]
    [InlineData("", "")]
    public void A_long_class_name_breaks_between_words(string name, string lines) =>
        Assert.Equal(lines, string.Join('|', ClassName.Lines(name)));

    [Fact]
    public void The_drawing_says_the_same_in_words()
    {
        var svg = RulerDrawing.Svg(Rated(Phosphorus, Amount.Below(5m)), RulerWords.Spoken(Rated(Phosphorus, Amount.Below(5m))), t => t.Replace("<", "&lt;", StringComparison.Ordinal));

        Assert.Contains("role=\"img\"", svg);
        Assert.Contains("aria-label=\"Phosphorus (P) &lt; 5 mg/kg on a ruler with the guide's limits: Very low, under 15.", svg);
        Assert.Contains("class=\"open-dot\"", svg);
        Assert.DoesNotContain("class=\"pointer\"", svg);
        Assert.DoesNotContain("<rect", svg);
    }

    private static double Place(int value) => Ruler.Of(Rated(Phosphorus, Amount.Measured(value))).From;

    private static Rating Rated(RatingScale scale, Amount amount)
    {
        var reading = new Reading(scale.Analyte, amount, scale.Unit, Method.By(null), "line 1");
        return new Rating("invented-guide", reading, amount, scale, scale.IndexOf(amount.Kind == AmountKind.Below ? 0 : amount.Number, null), null, []);
    }
}
