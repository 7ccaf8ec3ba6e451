using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Quantities;

/// <summary>Changes that are exact. Expected: standard atomic weights and unit definitions, worked by hand beside each row.</summary>
public sealed class ExactConversionTests
{
    [Theory]
    [InlineData("phosphorus-to-phosphate", 2.29133)] // (61.947524 + 79.995) / 61.947524
    [InlineData("potassium-to-potash", 1.20460)] // (78.1966 + 15.999) / 78.1966
    [InlineData("magnesium-to-magnesia", 1.65826)] // 40.304 / 24.305
    [InlineData("calcium-to-oxide", 1.39920)] // 56.077 / 40.078
    [InlineData("calcium-to-carbonate", 2.49728)] // 100.086 / 40.078
    [InlineData("nitrate-to-nitrate-nitrogen", 1 / 4.42664)] // 14.007 / 62.004
    [InlineData("sulfate-to-sulfur", 1 / 2.99613)] // 32.06 / 96.056
    [InlineData("conductivity-in-microsiemens", 1000)]
    public void One_unit_becomes(string id, double expected)
    {
        var formula = Formulas.All.Single(f => f.Id == id);

        Assert.Equal(expected, formula.Calculate(new Dictionary<string, double> { [formula.Inputs[0].Name] = 1 }).Value, 5);
    }

    // 1 mg/kg, 1 g/cm3, 1 in: 0.0254 g/m2 over 0.11208512 g/m2 for one lb/acre.
    [Theory]
    [InlineData("concentration-to-mass-per-area", 1, 1, 1, 0.226613)]
    [InlineData("concentration-to-mass-per-area", 1, 1.324, 6.67, 2.001)]
    [InlineData("concentration-to-mass-per-area", 1, 1.324, 6, 1.800)]
    [InlineData("concentration-to-mass-per-area", 1, 1.47, 6, 1.999)]
    [InlineData("concentration-to-mass-per-hectare", 1, 1, 1, 0.1)]
    [InlineData("concentration-to-mass-per-hectare", 1, 1.33, 15, 1.995)]
    public void A_concentration_in_a_layer_is(string id, double concentration, double density, double depth, double expected) => Assert.Equal(
        expected,
        Formulas.All.Single(f => f.Id == id).Calculate(new Dictionary<string, double> { ["c"] = concentration, ["D"] = density, ["d"] = depth }).Value,
        expected < 1 ? 6 : 3);

    // 60 mg/dm3 in a sample that weighs 1.20 g/cm3 is 50 mg/kg.
    [Fact]
    public void By_volume_becomes_by_mass_only_with_the_weight_of_the_scoop() =>
        Assert.Equal(50, Formulas.All.Single(f => f.Id == "volume-to-mass").Calculate(new Dictionary<string, double> { ["v"] = 60, ["w"] = 1.2 }).Value, 9);

    // Atomic mass over charge, times ten: mg/kg for 1 meq/100 g.
    [Theory]
    [InlineData(200.39, 1, 200.39)]
    [InlineData(121.525, 2, 243.05)]
    public void A_charge_becomes_mg_a_kg(double weight, double charge, double expected) =>
        Assert.Equal(expected, Formulas.All.Single(f => f.Id == "cation-content-of-charge").Calculate(new Dictionary<string, double> { ["q"] = charge, ["w"] = weight }).Value, 9);
}
