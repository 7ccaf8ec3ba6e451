using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Materials;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public class MagnesiumTestTests
{
    // Ohio State Extension column (osu-ocj2014): dolomitic below 50 ppm. Michigan State (msu-camg): 35 ppm is called low.
    private static readonly MagnesiumCutOff[] CutOffs =
    [
        new("ohio", "Ohio", "US-OH", 50, ReportingUnit.MilligramsPerKilogram, new Citation("osu-ocj2014", null, Evidence.Seen)),
        new("michigan", "Michigan", "US-MI", 35, ReportingUnit.MilligramsPerKilogram, new Citation("msu-camg", null, Evidence.Seen)),
    ];

    [Theory]
    [InlineData("US-OH", 49.9, true)]
    [InlineData("US-OH", 50.0, false)]
    [InlineData("US-MI", 34.9, true)]
    [InlineData("US-MI", 35.0, false)]
    [InlineData("US-MI", 49.9, false)]
    public void The_cut_off_of_the_own_state_decides_and_is_named(string region, double magnesium, bool wants)
    {
        var test = MagnesiumTest.For(Soil((decimal)magnesium, ReportingUnit.MilligramsPerKilogram), region, CutOffs, InventedRating.Of(Analyte.Mg, wants ? Standing.Above : Standing.Below));

        Assert.Equal(wants, test.WantsMagnesium);
        Assert.Contains(region == "US-OH" ? "50 mg/kg of Ohio" : "35 mg/kg of Michigan", test.Said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(98, true)]
    [InlineData(100, false)]
    public void Pounds_an_acre_are_turned_into_the_unit_of_the_cut_off(double poundsPerAcre, bool wants) =>
        Assert.Equal(wants, MagnesiumTest.For(Soil((decimal)poundsPerAcre, ReportingUnit.PoundsPerAcre), "US-OH", CutOffs, null).WantsMagnesium);

    [Theory]
    [InlineData(Standing.Below, true)]
    [InlineData(Standing.Target, false)]
    [InlineData(Standing.Above, false)]
    public void Elsewhere_the_class_of_the_guide_decides_and_is_named(Standing standing, bool wants)
    {
        var test = MagnesiumTest.For(Soil(40, ReportingUnit.MilligramsPerKilogram), "US-DE", CutOffs, InventedRating.Of(Analyte.Mg, standing));

        Assert.Equal(wants, test.WantsMagnesium);
        Assert.Contains("by invented", test.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_cut_off_and_rating_nothing_decides() =>
        Assert.Null(MagnesiumTest.For(Soil(40, ReportingUnit.MilligramsPerKilogram), null, CutOffs, null).WantsMagnesium);

    private static SoilTest Soil(decimal magnesium, ReportingUnit unit) =>
        InventedLime.Soil(6, null, null, new Reading(Analyte.Mg, Amount.Measured(magnesium), unit, Method.Extracted(Extractant.Mehlich3), "line 2"));
}
