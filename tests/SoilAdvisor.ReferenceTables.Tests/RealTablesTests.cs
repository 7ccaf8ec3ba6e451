using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>The tables of this repository.</summary>
public sealed class RealTablesTests(RealTables real) : IClassFixture<RealTables>
{
    [Fact]
    public void They_hold_no_problem() => Assert.Equal("", string.Join('\n', Tables.Check(RealTables.Folder)));

    [Fact]
    public void No_kind_of_table_is_empty()
    {
        var tables = real.Tables;

        Assert.All(
            [tables.Sources.Count, tables.Guides.Count, tables.RateTables.Count, tables.Crops.Count, tables.Materials.Count, tables.Cautions.Count, tables.CoverCrops.Count, tables.LimeMethods.Count, tables.OrganicRules.Count, tables.Variability.Spreads.Count],
            count => Assert.True(count > 0));
        Assert.All(tables.Guides.Values, guide => Assert.True(guide.Scales.Count + guide.Indices.Count > 0, guide.Id));
    }

    // Delaware soil test categories, Mehlich-3: phosphorus 51-100 is Optimum, over 100 Excessive (reference-tables/guides/delaware-vegetables, source ud-ph).
    [Theory]
    [InlineData(50, "Medium")]
    [InlineData(51, "Optimum")]
    [InlineData(100, "Optimum")]
    [InlineData(101, "Excessive")]
    public void A_scale_keeps_its_printed_limits(int value, string expected)
    {
        var scale = real.Tables.Guides["delaware-vegetables"].Scales.Single(s => s.Analyte == Analyte.P);

        Assert.Equal(expected, scale.Classes[scale.IndexOf(value, null)].Name);
        Assert.Equal(Standing.Stop, scale.Classes[^1].Standing);
    }

    [Fact]
    public void A_row_without_a_source_stands_where_its_document_does()
    {
        var row = real.Tables.Guides["delaware-vegetables"].Scales.Single(s => s.Analyte == Analyte.P).Classes[0];

        Assert.Equal(new Citation("ud-ph", "soil test interpretive categories", Evidence.Seen), row.Source);
    }

    [Fact]
    public void A_rate_is_kept_as_printed_and_converted_beside_it()
    {
        var rate = real.Tables.RateTables["british-columbia-cole-crops"].Rates[0];

        Assert.Equal("kg/ha", rate.PrintedUnit);
        Assert.Equal((double)rate.PrintedLow, rate.Rate.Low.KilogramsPerHectare, 9);
    }

    [Fact]
    public void The_build_up_rule_is_read_by_value_and_not_by_class()
    {
        var rule = real.Tables.RateTables["michigan-build-up-and-maintenance"];

        Assert.Equal(RateTableKind.BuildUpAndMaintenance, rule.Kind);
        Assert.Empty(rule.Rates);
        Assert.Empty(rule.PairWith("michigan-vegetables")!.Classes);
    }

    [Fact]
    public void Every_source_of_a_formula_is_in_the_bibliography() =>
        Assert.All(Formulas.All, formula => Assert.Contains(formula.Source.SourceId, real.Tables.Sources.Keys));
}
