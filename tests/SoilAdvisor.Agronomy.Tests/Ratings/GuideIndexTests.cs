using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Ratings;

public sealed class GuideIndexTests
{
    private static readonly Citation Source = new("invented", null, Evidence.Ours);

    private static readonly Guide Manganese = InventedGuide.Of() with
    {
        Indices =
        [
            new GuideIndex(
                "manganese-activity", Analyte.Mn, IndexFormulas.ManganeseActivityNewJersey,
                [
                    new IndexInput("Mn", Analyte.Mn, new ScaleMethod(Extractant.Mehlich3, ScaleDetection.Any, null), ReportingUnit.MilligramsPerKilogram),
                    new IndexInput("pH", Analyte.Ph, new ScaleMethod(null, ScaleDetection.Any, null), ReportingUnit.PhUnits),
                ],
                [Scale(Analyte.Mn, "manganese-activity", ("Deficient", null, 25), ("Adequate", 25, null))],
                Source),
        ],
    };

    private static readonly Guide Saturation = InventedGuide.Of() with
    {
        Indices =
        [
            new GuideIndex(
                "saturation", Analyte.P, IndexFormulas.PhosphorusSaturationRatio,
                [Input("P", Analyte.P), Input("Al", Analyte.Al), Input("Fe", Analyte.Fe)],
                [Scale(Analyte.P, "saturation", ("Low", null, 0.1m), ("High", 0.1m, null))],
                Source),
        ],
    };

    // By hand: 101.7 + 3.75 x 8 - 15.2 x 6.4 = 34.42; at pH 7.1 it is 23.78, and at 7.0 25.3.
    [Theory]
    [InlineData("6.4", "34.42", "Adequate")]
    [InlineData("7.0", "25.3", "Adequate")]
    [InlineData("7.1", "23.78", "Deficient")]
    public void An_index_is_computed_and_rated_in_its_own_classes(string ph, string value, string expected)
    {
        var rating = Assert.Single(Manganese.RateIndices(Test(Extracted(Analyte.Mn, 8), Ph(ph)), default)).Answer.Value;

        Assert.Equal(Number(value), rating.Amount.Number);
        Assert.Equal((expected, "manganese-activity", Analyte.Mn), (rating.Class.Name, rating.Scale.Index, rating.Analyte));
    }

    [Fact]
    public void A_reading_is_never_read_on_the_scale_of_an_index()
    {
        var manganese = Extracted(Analyte.Mn, 8);

        Assert.Equal("analyte-not-covered", Manganese.Rate(Test(manganese, Ph("6.4")), manganese, default).Reason.Code);
    }

    [Theory]
    [InlineData(Procedure.PhCalciumChloride)]
    [InlineData(Procedure.PhPotassiumChloride)]
    public void pH_in_a_salt_solution_is_no_input(Procedure procedure)
    {
        var answer = Assert.Single(Manganese.RateIndices(Test(Extracted(Analyte.Mn, 8), Ph("6.4", procedure)), default)).Answer;

        Assert.Equal("index-input-missing", answer.Reason.Code);
        Assert.Contains("pH in water", answer.Reason.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Manganese_by_another_extractant_is_no_input()
    {
        var dtpa = new Reading(Analyte.Mn, Amount.Measured(8), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Dtpa), "x");

        Assert.Equal("index-input-missing", Assert.Single(Manganese.RateIndices(Test(dtpa, Ph("6.4")), default)).Answer.Reason.Code);
    }

    // 16 lb/acre is 8 mg/kg by two million pounds of soil.
    [Fact]
    public void Inputs_are_brought_to_the_unit_of_the_formula_and_the_assumption_stays()
    {
        var manganese = new Reading(Analyte.Mn, Amount.Measured(16), ReportingUnit.PoundsPerAcre, Method.Extracted(Extractant.Mehlich3), "x");

        var rating = Assert.Single(Manganese.RateIndices(Test(manganese, Ph("6.4")), default)).Answer.Value;

        Assert.Equal(34.42m, rating.Amount.Number);
        Assert.Contains(rating.Assumptions, a => a.Code == "pounds-per-acre-factor");
    }

    [Fact]
    public void Saturation_is_asked_for_only_where_a_metal_was_reported()
    {
        Assert.Empty(Saturation.RateIndices(Test(Extracted(Analyte.P, 120)), default));
        Assert.False(Assert.Single(Saturation.RateIndices(Test(Extracted(Analyte.P, 120), Extracted(Analyte.Al, 900)), default)).Answer.IsGiven);
    }

    // By hand: 120/30.97 = 3.8747; 900/26.98 + 150/55.85 = 33.3580 + 2.6858 = 36.0438; ratio 0.10750.
    [Fact]
    public void The_saturation_ratio_counts_by_moles()
    {
        var test = Test(Extracted(Analyte.P, 120), Extracted(Analyte.Al, 900), Extracted(Analyte.Fe, 150));

        var rating = Assert.Single(Saturation.RateIndices(test, default)).Answer.Value;

        Assert.Equal(0.1075m, Math.Round(rating.Amount.Number, 4));
        Assert.Equal("High", rating.Class.Name);
    }

    [Fact]
    public void Nothing_to_divide_by_is_refused()
    {
        var test = Test(Extracted(Analyte.P, 120), Extracted(Analyte.Al, 0), Extracted(Analyte.Fe, 0));

        Assert.Equal("formula-no-result", Assert.Single(Saturation.RateIndices(test, default)).Answer.Reason.Code);
    }

    [Fact]
    public void Working_shows_the_formula_and_then_the_class()
    {
        var sheet = new WorkingSheet();

        _ = Manganese.RateIndices(Test(Extracted(Analyte.Mn, 8), Ph("6.4")), default, sheet);

        Assert.Equal(["manganese-activity-new-jersey", "rating"], sheet.Lines.Select(l => l.Formula));
        Assert.Equal([Origin.Given("x"), Origin.Given("x")], sheet.Lines[0].Inputs.Select(i => i.From));
        Assert.Equal(Origin.Line(1), sheet.Lines[1].Inputs[0].From);
    }

    // 100 x 120/900 = 13.3 percent by mass; the molar ratio of the same soil is 0.1075: the numbers cannot stand for each other.
    [Fact]
    public void The_measures_of_saturation_are_types_of_their_own()
    {
        var byMass = IndexFormulas.PhosphorusToAluminium.Of((Mass(120), Mass(900)));
        var byMoles = IndexFormulas.PhosphorusSaturationRatio.Of((Mass(120), Mass(900), Mass(150)));

        Assert.IsType<SoilIndex<PhosphorusToAluminium>>(byMass);
        Assert.IsType<SoilIndex<PhosphorusSaturationRatio>>(byMoles);
        Assert.Equal(13.333, byMass.Value, 3);
        Assert.Equal(0.1075, byMoles.Value, 4);
    }

    private static RatingScale Scale(Analyte about, string index, params (string Name, decimal? Lower, decimal? Upper)[] classes) => new(
        about, new ScaleMethod(null, ScaleDetection.Any, null), ReportingUnit.Index, null,
        [.. classes.Select(c => InventedGuide.Class(c.Name, Standing.Target, c.Lower, true, c.Upper, false))])
    {
        Index = index,
    };

    private static IndexInput Input(string symbol, Analyte analyte) => new(symbol, analyte, new ScaleMethod(Extractant.Mehlich3, ScaleDetection.Any, null), ReportingUnit.MilligramsPerKilogram);

    private static SoilConcentration Mass(double value) => SoilConcentration.FromMilligramsPerKilogram(value);

    private static SoilTest Test(params Reading[] readings) => InventedGuide.Test(readings);

    private static Reading Extracted(Analyte analyte, decimal value) => new(analyte, Amount.Measured(value), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3), "x");

    private static Reading Ph(string value, Procedure procedure = Procedure.PhWater11) => new(Analyte.Ph, Amount.Measured(Number(value)), ReportingUnit.PhUnits, Method.By(procedure), "x");

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
