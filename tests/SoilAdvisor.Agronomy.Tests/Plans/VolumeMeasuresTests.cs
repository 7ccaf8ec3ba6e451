using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.Materials.InventedMaterial;

namespace SoilAdvisor.Agronomy.Tests.Plans;

public class VolumeMeasuresTests
{
    [Theory]
    [InlineData("lb/cup", 0.5, 1, 2, "cup")]
    [InlineData("lb/pint", 1.25, 5, 4, "pint")]
    [InlineData("lb/cubic-foot", 45, 450, 10, "cubic-foot")]
    [InlineData("lb/cubic-yard", 1000, 2500, 2.5, "cubic-yard")]
    [InlineData("lb/gal", 9.5, 95, 10, "gal")]
    public void A_published_density_gives_a_measure_in_the_unit_of_the_bench(string unit, double density, double pounds, double value, string shown)
    {
        var measure = VolumeMeasures.For(Of("stuff", "mineral", Figure("bulk-density", (decimal)density, unit)), Mass.FromPounds(pounds))!;

        Assert.Equal(value, measure.Value, 9);
        Assert.Equal(shown, measure.Unit);
        Assert.Equal("bulk-density", measure.Source.Locator);
    }

    [Theory]
    [InlineData(3.99, "cup")]
    [InlineData(4.0, "pint")]
    [InlineData(31.99, "pint")]
    [InlineData(32.0, "cubic-foot")]
    public void The_unit_changes_at_4_cups_and_at_16_pints(double cups, string unit)
    {
        var measure = VolumeMeasures.For(Of("stuff", "mineral", Figure("bulk-density", 1, "lb/cup")), Mass.FromPounds(cups));

        Assert.Equal(unit, measure!.Unit);
    }

    [Fact]
    public void Without_a_published_density_the_answer_is_to_weigh_it()
    {
        Assert.Null(VolumeMeasures.For(Meal, Mass.FromPounds(1)));
        Assert.Null(VolumeMeasures.For(Of("ranged", "compost", Figure("bulk-density", null, "lb/cubic-yard", 750, 1000)), Mass.FromPounds(1)));
        Assert.Null(VolumeMeasures.For(Of("guessed", "compost", Figure("bulk-density", 50, "lb/cubic-foot", evidence: Evidence.CommonPractice)), Mass.FromPounds(1)));
    }

    [Fact]
    public void A_recalled_density_is_used_and_stays_marked_as_recalled()
    {
        var measure = VolumeMeasures.For(Of("recalled", "compost", Figure("bulk-density", 45, "lb/cubic-foot", evidence: Evidence.FromMemory)), Mass.FromPounds(900))!;

        Assert.Equal(Evidence.FromMemory, measure.Source.Evidence);
    }

    [Theory]
    [InlineData(1.25, true)]
    [InlineData(1.26, false)]
    public void Densities_that_differ_by_more_than_a_quarter_give_no_measure(double second, bool measured) =>
        Assert.Equal(measured, VolumeMeasures.For(Of("disputed", "mineral", Figure("bulk-density", 1, "lb/cup"), Figure("bulk-density", (decimal)second, "lb/cup")), Mass.FromPounds(1)) is not null);

    [Fact]
    public void Micronutrients_are_never_measured_by_volume() =>
        Assert.Null(VolumeMeasures.For(Of("borate", "micronutrient", Figure("bulk-density", 1, "lb/cup")), Mass.FromPounds(1)));

    [Fact]
    public void Prohibited_materials_are_never_measured_at_all() =>
        Assert.Null(VolumeMeasures.For(Of("sludge", "prohibited", Figure("bulk-density", 1, "lb/cup")) with { Status = OrganicStatus.Prohibited }, Mass.FromPounds(1)));
}
