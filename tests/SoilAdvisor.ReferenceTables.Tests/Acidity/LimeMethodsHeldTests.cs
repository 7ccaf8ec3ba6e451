using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using LabReading = SoilAdvisor.Agronomy.SoilTests.Reading;

namespace SoilAdvisor.ReferenceTables.Tests.Acidity;

/// <summary>What the lime methods and target pH of this repository keep, whoever adds the next one.</summary>
public sealed class LimeMethodsHeldTests
{
    private static readonly Tables Tables = Tables.Load(RealTables.Folder);

    [Theory]
    [InlineData(Procedure.BufferMehlich, 6.2, "mehlich-north-carolina")]
    [InlineData(Procedure.BufferModifiedMehlich, 6.0, "modified-mehlich-pennsylvania")]
    [InlineData(Procedure.BufferSmp, 6.4, "smp-iowa")]
    [InlineData(Procedure.BufferSikora, 6.4, "sikora-oregon-2025")]
    [InlineData(Procedure.BufferAdamsEvans, 7.8, "adams-evans")]
    [InlineData(Procedure.BufferMooreSikora, 7.8, "moore-sikora")]
    public void A_method_that_was_read_goes_before_one_recalled_whatever_the_region(Procedure buffer, double value, string method)
    {
        Assert.All([null, "US-KS", "US-WI", "US-MN", "US-OH"], region => Assert.Equal(method, Ask(5.5m, (decimal)value, buffer, 6.5m, region).Value.Method));
    }

    [Fact]
    public void Every_method_known_only_to_the_laboratory_is_refused_by_name() =>
        Assert.All(Tables.LimeMethods.Values.Where(m => m.Kind == LimeMethodKind.LaboratoryOnly), m => Assert.Equal("lime-method-not-held", Ask(5.5m, 6.0m, BufferOf(m), 6.5m, null, m).Reason.Code));

    [Fact]
    public void At_or_above_the_target_no_method_gives_lime() =>
        Assert.All(Tables.LimeMethods.Values, m => Assert.All([6.5m, 6.6m, 7.4m], ph => Assert.True(Ask(ph, 5.8m, BufferOf(m), 6.5m, null, m).Value.Lime.IsZero)));

    [Fact]
    public void A_lower_buffer_never_needs_less_lime_by_any_method_and_target()
    {
        var given = 0;
        foreach (var method in Tables.LimeMethods.Values.Where(m => m.Reads == LimeReads.BufferPh))
        {
            foreach (var target in new[] { 5.2m, 5.6m, 6.0m, 6.5m, 6.8m, 7.2m })
            {
                double? milder = null;
                for (var buffer = 8.0m; buffer >= 4.8m; buffer -= 0.1m)
                {
                    if (Ask(4.8m, buffer, BufferOf(method), target, null, method).TryGet(out var lime, out _))
                    {
                        Assert.True(lime.Rate.PoundsPerAcre >= (milder ?? 0) - 1e-9, $"{method.Id}, target {target}, buffer {buffer}");
                        milder = lime.Rate.PoundsPerAcre;
                        given++;
                    }
                }
            }
        }

        Assert.True(given > 500);
    }

    // Typed from Minnesota's recalled cells: recalled, so a check of our typing and not of the publication.
    [Theory]
    [InlineData(5.99, true)]
    [InlineData(6.0, false)]
    public void Minnesota_is_used_below_ph_6_only(double ph, bool given) =>
        Assert.Equal(given, Ask((decimal)ph, 6.5m, Procedure.BufferSikora, 6.5m, "US-MN", Tables.LimeMethods["sikora-minnesota-area-1"]).IsGiven);

    [Fact]
    public void Without_a_buffer_a_texture_gives_a_rough_rate_and_says_what_to_ask()
    {
        var test = Test(5.5m, null, null) with { SoilGroup = SoilGroup.ClayLoam };

        var lime = LimeRequirementCalculation.For(test, Target(6.5m), Tables.LimeMethods.Values, null, null, [], null).Value;

        Assert.Equal("texture-united-kingdom", lime.Method);
        Assert.Equal(10m, lime.PrintedValue);
        Assert.Contains(lime.Assumptions, a => a.Code == "lime-rough");
        Assert.Contains(lime.Assumptions, a => a.Code == "lime-without-buffer" && a.Text.Contains("buffer's name", StringComparison.Ordinal));
    }

    [Fact]
    public void A_buffer_without_its_name_gives_not_even_a_rough_rate() =>
        Assert.Equal("buffer-name-missing", LimeRequirementCalculation.For(Test(5.5m, 6.2m, null) with { SoilGroup = SoilGroup.ClayLoam }, Target(6.5m), Tables.LimeMethods.Values, null, null, [], null).Reason.Code);

    // Poland prints classes by pH in potassium chloride: 4.5 ends "needed" of very light soil (2.0), 4.6 is "advisable" (1.0), above 5.5 none. 1 t CaO is 1.785 t CaCO3.
    [Theory]
    [InlineData(4.0, 3.0)]
    [InlineData(4.1, 2.0)]
    [InlineData(4.5, 2.0)]
    [InlineData(4.6, 1.0)]
    [InlineData(5.1, 0)]
    public void Each_limit_of_the_polish_classes_belongs_to_its_own_class(double ph, double tonnes)
    {
        var test = new SoilTest("s", null, null, null, SoilGroup.Sand, null, null, [new LabReading(Analyte.Ph, Amount.Measured((decimal)ph), ReportingUnit.PhUnits, Method.By(Procedure.PhPotassiumChloride), "x")], []);

        var lime = LimeRequirementCalculation.For(test, Target(7.0m), Tables.LimeMethods.Values, Tables.LimeMethods["texture-poland"], null, [], null).Value;

        Assert.Equal(tonnes, (double)lime.PrintedValue, 9);
        Assert.Equal(tonnes * 1000 * 100.09 / 56.08, lime.Rate.Amount.KilogramsPerHectare, 3);
    }

    // At an acidity of 7.8 meq/100 g: the turf table prints 140 lb per 1000 sq ft to pH 6.5; the field rule gives 840 x 7.8 = 6552 lb/acre, 150 lb per 1000 sq ft.
    [Theory]
    [InlineData("modified-mehlich-pennsylvania", 150.4)]
    [InlineData("modified-mehlich-pennsylvania-turf", 140.0)]
    public void The_two_pennsylvania_routes_differ(string method, double poundsPer1000SquareFeet)
    {
        var lime = LimeRequirementCalculation.For(Test(5.5m, 6.0m, Procedure.BufferModifiedMehlich, 7.8m), Target(6.5m), Tables.LimeMethods.Values, Tables.LimeMethods[method], "US-PA", [], null).Value;

        Assert.Equal(poundsPer1000SquareFeet, lime.Rate.Amount.PoundsPer1000SquareFeet, 1);
    }

    // Typed from the publications as restated: Delaware 5.2 for potato, 6.2 for many vegetables; Oregon floor 6.3 for brassicas; Connecticut 5.2.
    [Theory]
    [InlineData("potato", "US-DE", 5.2, null)]
    [InlineData("cabbage", "US-DE", 6.2, null)]
    [InlineData("wheat", "US-DE", 6.0, null)]
    [InlineData("potato", "US-CT", 5.2, null)]
    [InlineData("tomato", "US-NC", 6.5, null)]
    [InlineData("cabbage", "US-NC", 6.0, null)]
    [InlineData("cabbage", "US-OR", 6.5, 6.3)]
    [InlineData("carrot", "US-FL", 6.5, null)]
    [InlineData("cabbage", null, 6.5, 6.2)]
    public void The_target_is_that_of_crop_and_region(string crop, string? region, double target, double? limeBelow)
    {
        var found = TargetPhChoice.For([new(Tables.Crops[crop], null, null, null, null, null)], Test(5.5m, null, null), null, Tables.TargetPhs, region).Value.Target;

        Assert.Equal(((decimal)target, (decimal?)limeBelow), (found.Value, found.LimeBelow));
    }

    [Fact]
    public void Muck_is_limed_to_its_own_lower_target()
    {
        var test = Test(4.5m, null, null) with { SoilGroup = SoilGroup.Organic };

        Assert.Equal(5.6m, TargetPhChoice.For([new(Tables.Crops["onion"], null, null, null, null, null)], test, null, Tables.TargetPhs, "US-DE").Value.Target.Value);
        Assert.Equal("organic-soil-target", TargetPhChoice.For([new(Tables.Crops["onion"], null, null, null, null, null)], test, null, Tables.TargetPhs, "US-CA").Reason.Code);
    }

    private static Answer<LimeRequirement> Ask(decimal ph, decimal buffer, Procedure procedure, decimal target, string? region, LimeMethod? method = null) =>
        LimeRequirementCalculation.For(Test(ph, buffer, procedure), Target(target), Tables.LimeMethods.Values, method, region, [], null);

    // A method that reads no buffer is asked with one that nothing here is made for.
    private static Procedure BufferOf(LimeMethod method) => method.Buffers.Count > 0 ? method.Buffers[0] : Procedure.BufferWoodruff;

    private static TargetPh Target(decimal value) => new(value, null, null, Citation.OurJudgement);

    private static SoilTest Test(decimal ph, decimal? buffer, Procedure? procedure, decimal acidity = 5)
    {
        List<LabReading> readings =
        [
            new(Analyte.Ph, Amount.Measured(ph), ReportingUnit.PhUnits, Method.By(Procedure.PhWater11), "x"),
            new(Analyte.Acidity, Amount.Measured(acidity), ReportingUnit.MilliequivalentsPer100Grams, default, "x"),
        ];
        if (buffer is { } value)
        {
            readings.Add(new(Analyte.BufferPh, Amount.Measured(value), ReportingUnit.PhUnits, Method.By(procedure), "x"));
        }

        return new SoilTest("s", null, null, null, null, null, null, readings, []);
    }
}
