using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static SoilAdvisor.Agronomy.Tests.Acidity.InventedLime;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public sealed class LimeMethodLimitsTests
{
    private static readonly LimeMethod Equations = InventedLime.Table with
    {
        Id = "equations",
        Kind = LimeMethodKind.TargetEquations,
        FormulaId = "lime-by-target-equation",
        Unit = "ton/acre",
        Cells = [],
        Equations = [new(6.0m, 49.3m, -7.1m, 0, 0, Citation.OurArithmetic), new(6.5m, 60.4m, -8.7m, 0, 0, Citation.OurArithmetic)],
        Limits = new LimeLimits(LimeSoil.Mineral, 4.5m, 6.4m, 5.0m, 6.8m),
    };

    // By hand: 60.4 - 8.7 x 6.5 = 3.85; 49.3 - 7.1 x 6.5 = 3.15 for the next lower target.
    [Theory]
    [InlineData(6.5, 3.85)]
    [InlineData(6.4, 3.15)]
    [InlineData(6.9, 3.85)]
    public void An_equation_is_read_for_its_printed_target(double target, double tons) =>
        Assert.Equal(tons * 2000, Ask(5.5, 6.5, target).Value.Rate.PoundsPerAcre, 6);

    [Theory]
    [InlineData(4.49, 6.0, "ph-outside-method")]
    [InlineData(4.5, 6.0, null)]
    [InlineData(6.39, 6.0, null)]
    [InlineData(6.4, 6.0, "ph-outside-method")]
    [InlineData(5.5, 4.99, "buffer-outside-method")]
    [InlineData(5.5, 5.0, null)]
    [InlineData(5.5, 6.8, null)]
    [InlineData(5.5, 6.81, "buffer-outside-method")]
    public void Outside_its_limits_a_method_gives_no_rate(double ph, double buffer, string? code)
    {
        var answer = Ask(ph, buffer, 6.5);

        Assert.Equal(code, answer.IsGiven ? null : answer.Reason.Code);
    }

    [Fact]
    public void A_target_below_all_printed_ones_is_refused() => Assert.Equal("target-outside-method", Ask(5.5, 6.5, 5.9).Reason.Code);

    [Theory]
    [InlineData(SoilGroup.Organic, false)]
    [InlineData(SoilGroup.Loam, true)]
    [InlineData(null, true)]
    public void A_method_for_mineral_soils_is_not_used_on_muck(SoilGroup? soil, bool given) =>
        Assert.Equal(given, Lime(Soil(5.5m, 6.5m, Procedure.BufferSmp) with { SoilGroup = soil }, 6.5m, Equations).IsGiven);

    [Fact]
    public void A_method_for_organic_soils_asks_for_the_texture() =>
        Assert.Equal("soil-outside-method", Lime(Soil(5.5m, 6.5m, Procedure.BufferSmp), 6.5m, Equations with { Limits = new(LimeSoil.Organic, null, null, null, null) }).Reason.Code);

    [Fact]
    public void An_equation_never_gives_lime_below_nothing()
    {
        var answer = Lime(Soil(5.5m, 7.2m, Procedure.BufferSmp), 6.5m, Equations with { Limits = LimeLimits.None }).Value;

        Assert.True(answer.Lime.IsZero);
        Assert.Contains(answer.Assumptions, a => a.Code == "lime-equation-zero");
    }

    [Fact]
    public void A_method_whose_numbers_are_not_held_names_the_laboratorys_rate()
    {
        var pointer = InventedLime.Table with { Kind = LimeMethodKind.LaboratoryOnly, Cells = [] };

        var refused = Lime(Soil(5.5m, 6.5m, Procedure.BufferSmp), 6.5m, methods: [pointer]).Reason;

        Assert.Equal("lime-method-not-held", refused.Code);
        Assert.Contains("laboratory printed", refused.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_method_is_tried_where_the_first_does_not_reach()
    {
        // North Carolina ends at target 6.6; a recalled method for the same buffer goes on.
        var northeast = NorthCarolina with
        {
            Id = "northeast",
            FormulaId = "lime-mehlich-northeast",
            Unit = "lb/acre",
            Source = AdamsEvans.Source,
            Parameters = [.. NorthCarolina.Parameters, new("square-coefficient", "", 0.1m, "", Citation.OurArithmetic), new("linear-coefficient", "", 1, "", Citation.OurArithmetic), new("lime-per-acidity", "", 755, "", Citation.OurArithmetic)],
        };
        var test = Soil(5.5m, 6.1m, Procedure.BufferMehlich);

        // By hand: acidity 4 x 0.5 = 2; (0.1 x 4 + 2) x 755 = 1812.
        var recalled = Lime(test, 6.8m, methods: [NorthCarolina, northeast]).Value;
        Assert.Equal(("northeast", 1812.0), (recalled.Method, Math.Round(recalled.Rate.PoundsPerAcre, 6)));
        Assert.Contains(recalled.Assumptions, a => a.Code == "lime-method-recalled");
        Assert.Equal("north-carolina", Lime(test, 6.5m, methods: [northeast, NorthCarolina]).Value.Method);
    }

    private static Answer<LimeRequirement> Ask(double ph, double buffer, double target) => Lime(Soil((decimal)ph, (decimal)buffer, Procedure.BufferSmp), (decimal)target, Equations);
}
