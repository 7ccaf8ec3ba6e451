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
    public void Every_limit_of_the_guide_is_a_long_mark()
    {
        Assert.Equal([15, 30, 50, 150], Limits(Ruler.Of(Rated(Phosphorus, Amount.Measured(20m)))));
        Assert.Equal([175, 350], Limits(Ruler.Of(Rated(WholeSteps, Amount.Measured(20m)))));
        Assert.Equal([6, 7], Limits(Ruler.Of(Rated(Acidity, Amount.Measured(6.4m)))));
        Assert.Equal([1, 2, 5, 9], Limits(Ruler.Of(Rated(WithGap, Amount.Measured(6m)))));
    }

    // From 15 to 30 is 15 steps, from 30 to 50 is 20, from 50 to 150 is 100.
    [Fact]
    public void On_an_even_ruler_the_limits_stand_as_far_apart_as_they_are()
    {
        var marks = Ruler.Of(Rated(Phosphorus, Amount.Measured(20m))).Marks.Where(m => m.IsLimit).Select(m => m.Place).ToList();

        Assert.Equal(15.0 / 20, (marks[1] - marks[0]) / (marks[2] - marks[1]), 9);
        Assert.Equal(100.0 / 20, (marks[3] - marks[2]) / (marks[2] - marks[1]), 9);
    }

    // 12 times the lowest limit of 15 is 180: up to there steps are even, beyond they multiply. From 15 to 30 doubles, from 30 to 50 is five thirds.
    [Theory]
    [InlineData(180, false)]
    [InlineData(181, true)]
    public void Only_a_ruler_that_spans_more_than_a_decade_is_ruled_by_tens(int value, bool byTens) =>
        Assert.Equal(byTens, Ruler.Of(Rated(Phosphorus, Amount.Measured(value))).IsByTens);

    [Fact]
    public void On_a_ruler_by_tens_equal_ratios_are_equal_steps()
    {
        var marks = Ruler.Of(Rated(Phosphorus, Amount.Measured(400m))).Marks.Where(m => m.IsLimit).Select(m => m.Place).ToList();

        Assert.Equal(Math.Log(2) / Math.Log(5.0 / 3), (marks[1] - marks[0]) / (marks[2] - marks[1]), 9);
    }

    [Fact]
    public void A_whisker_reaches_from_its_low_to_its_high_end_and_holds_the_result()
    {
        var rating = Rated(Phosphorus, Amount.Measured(20m));
        var ruler = Ruler.Of(rating, new Whisker(16, 25));
        var (low, high) = ruler.PlaceOf(new Whisker(16, 25));
        var (place, _) = ruler.PlaceOf(rating);

        Assert.Equal((20.0 - 16) / (25 - 16), (place - low) / (high - low), 9);
        Assert.InRange(low, ruler.Marks.First(m => m.Number == 15).Place, place);
        Assert.InRange(high, place, ruler.Marks.First(m => m.Number == 30).Place);
    }

    [Fact]
    public void A_ruler_is_long_enough_for_a_whisker_beyond_the_last_limit()
    {
        var (low, high) = Ruler.Of(Rated(Phosphorus, Amount.Measured(160m)), new Whisker(100, 300)).PlaceOf(new Whisker(100, 300));

        Assert.True(low > 0);
        Assert.True(high < 1);
    }

    [Fact]
    public void Results_on_one_scale_share_one_ruler()
    {
        var (low, high) = (Rated(Phosphorus, Amount.Measured(20m)), Rated(Phosphorus, Amount.Measured(90m)));
        var ruler = Ruler.Of([(low, null), (high, null)]);

        Assert.Equal(90.0 / 20, ruler.PlaceOf(high).From / ruler.PlaceOf(low).From, 9);
    }

    [Fact]
    public void A_zero_on_a_ruler_by_tens_lies_off_its_end()
    {
        var wide = InventedPlan.Scale(Analyte.Zn, Extractant.Dtpa, ReportingUnit.MilligramsPerKilogram, null, ("Low", Standing.Below, null, 1m), ("High", Standing.Above, 1m, 100m), ("Higher", Standing.Above, 100m, null));

        Assert.True(Ruler.Of(Rated(wide, Amount.Measured(0m))).IsOffTheEnd(Rated(wide, Amount.Measured(0m))));
        Assert.False(Ruler.Of(Rated(wide, Amount.Measured(0.9m))).IsOffTheEnd(Rated(wide, Amount.Measured(0.9m))));
    }

    [Fact]
    public void A_gap_of_a_reference_range_has_a_stretch_without_a_name() =>
        Assert.Equal(["Low", "", "High"], Ruler.Of(Rated(WithGap, Amount.Measured(6m))).Classes.Select(c => c.Name));

    [Fact]
    public void Less_than_five_lies_anywhere_from_the_start_to_five()
    {
        var rating = Rated(Phosphorus, Amount.Below(5m));
        var ruler = Ruler.Of(rating);

        Assert.Equal(0, ruler.PlaceOf(rating).From);
        Assert.Equal(ruler.Marks.First(m => m.Number == 15).Place / 3, ruler.PlaceOf(rating).To, 12);
    }

    [Fact]
    public void More_than_a_number_lies_anywhere_from_it_to_the_end()
    {
        var rating = Rated(Phosphorus, Amount.Above(150m));
        var ruler = Ruler.Of(rating);

        Assert.Equal(ruler.Marks.Last(m => m.IsLimit).Place, ruler.PlaceOf(rating).From);
        Assert.Equal(1, ruler.PlaceOf(rating).To);
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
        var rating = Rated(Phosphorus, Amount.Measured(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture)));
        var ruler = Ruler.Of(rating);
        var found = ruler.Classes.Single(c => c.Index == rating.ClassIndex);

        Assert.Equal(name, found.Name);
        Assert.InRange(ruler.PlaceOf(rating).From, found.Start, found.End);
    }

    [Fact]
    public void Where_whole_steps_are_printed_the_rounded_value_is_drawn()
    {
        Assert.Equal(Place(WholeSteps, 175m), Place(WholeSteps, 174.6m));
        Assert.True(Place(WholeSteps, 174.4m) < Place(WholeSteps, 175m));
    }

    [Fact]
    public void A_larger_value_never_stands_further_left() =>
        Gen.Int[0, 149].SelectMany(a => Gen.Int[a, 149].Select(b => (a, b))).Sample(pair =>
            Place(Phosphorus, pair.a) <= Place(Phosphorus, pair.b) && Place(Phosphorus, pair.a) is >= 0 and <= 1);

    [Fact]
    public void Numbers_on_one_row_never_touch() =>
        Gen.Int[1, 50].SelectMany(a => Gen.Int[1, 50].Select(b => (a, b))).Sample(steps =>
        {
            var scale = InventedPlan.Scale(Analyte.Zn, Extractant.Dtpa, ReportingUnit.MilligramsPerKilogram, null, ("A", Standing.Below, null, steps.a), ("B", Standing.Target, steps.a, steps.a + steps.b), ("C", Standing.Above, steps.a + steps.b, null));
            var ruler = Ruler.Of(Rated(scale, Amount.Measured(steps.a)));
            var rows = ruler.Marks.Zip(ruler.NumberRows()).GroupBy(m => m.Second).Select(r => r.Select(m => m.First).ToList());
            return rows.All(row => row.Zip(row.Skip(1)).All(pair => (pair.Second.Place - pair.First.Place) * 270 > 3));
        });

    [Fact]
    public void Classes_too_narrow_for_their_names_are_numbered_and_the_key_is_printed()
    {
        var narrow = InventedPlan.Scale(Analyte.Zn, Extractant.Dtpa, ReportingUnit.MilligramsPerKilogram, null,
            ("Deficient", Standing.Below, null, 50m), ("Marginal", Standing.Below, 50m, 52m), ("Sufficient", Standing.Target, 52m, null));

        Assert.False(Ruler.Of(Rated(narrow, Amount.Measured(51m))).HoldsNames);
        Assert.True(Ruler.Of(Rated(Acidity, Amount.Measured(6.4m))).HoldsNames);
        Assert.Equal("1 Deficient · 2 Marginal · 3 Sufficient", RulerWords.Key(Rated(narrow, Amount.Measured(51m))));
    }

    [Theory]
    [InlineData("6.4", "A small mark every 0.1.")]
    [InlineData("20", "A small mark every 10 mg/kg.")]
    [InlineData("400", "Ruled by tens: small marks at 1, 2, 3 to 9 of each ten, in mg/kg.")]
    public void The_ruling_is_said_in_words(string value, string words)
    {
        var (scale, unit) = value == "6.4" ? (Acidity, "") : (Phosphorus, "mg/kg");

        Assert.Equal(words, Ruler.Of(Rated(scale, Amount.Measured(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture)))).RulingInWords(unit));
    }

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
        var line = new RatedLine(Rated(Phosphorus, Amount.Measured(14m)), "probably Very low (62 %)", new Whisker(11, 18), [InventedPlan.GuidePage]);
        var svg = RulerDrawing.Whole(line.Rating, line.Whisker, RulerWords.Spoken(line), t => t);

        Assert.Contains("role=\"img\"", svg);
        Assert.Contains("aria-label=\"Phosphorus (P) 14 mg/kg on a ruler with the guide's limits: Very low, under 15. How sure: probably Very low (62 %). The true value likely lies between 11 and 18 mg/kg. All classes: Very low: under 15 ·", svg);
        Assert.Contains("class=\"whisker\"", svg);
        Assert.Contains("class=\"dot\"", svg);
        Assert.DoesNotContain("<rect", svg);
    }

    [Fact]
    public void Less_than_is_drawn_open_and_without_a_whisker()
    {
        var line = new RatedLine(Rated(Phosphorus, Amount.Below(5m)), null, null, [InventedPlan.GuidePage]);
        var svg = RulerDrawing.Whole(line.Rating, line.Whisker, RulerWords.Spoken(line), t => t.Replace("<", "&lt;", StringComparison.Ordinal));

        Assert.Contains("aria-label=\"Phosphorus (P) &lt; 5 mg/kg on a ruler", svg);
        Assert.Contains("class=\"open-dot\"", svg);
        Assert.DoesNotContain("class=\"dot\"", svg);
        Assert.DoesNotContain("class=\"whisker\"", svg);
    }

    private static IEnumerable<double> Limits(Ruler ruler) => ruler.Marks.Where(m => m.IsLimit).Select(m => m.Number);

    private static double Place(RatingScale scale, decimal value) => Ruler.Of(Rated(scale, Amount.Measured(value))).PlaceOf(Rated(scale, Amount.Measured(value))).From;

    private static Rating Rated(RatingScale scale, Amount amount)
    {
        var reading = new Reading(scale.Analyte, amount, scale.Unit, Method.By(null), "line 1");
        return new Rating("invented-guide", reading, amount, scale, scale.IndexOf(amount.Kind == AmountKind.Below ? 0 : amount.Number, null), null, []);
    }
}
