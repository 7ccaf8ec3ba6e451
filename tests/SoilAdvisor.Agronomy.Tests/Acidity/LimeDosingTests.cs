using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Tests.Materials;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public class LimeDosingTests
{
    private static readonly Citation Source = new("invented", null, Evidence.Seen);

    [Theory]
    [InlineData(4000, 1)]
    [InlineData(4001, 2)]
    [InlineData(6000, 2)]
    public void On_the_surface_two_tons_go_at_a_time_and_the_rest_waits_two_to_three_years(double poundsPerAcre, int doses)
    {
        // University of Missouri Extension column (mo-miller): 3 ton/acre not worked in: 2 now, the rest in two to three years. Ours are equal doses within that limit.
        var split = Split(poundsPerAcre, InventedGround.Of() with { OnSurface = true });

        Assert.Equal(doses, split.Each.Count);
        Assert.Equal("surface", split.Limit!.Id);
        Assert.Equal(doses > 1, split.Said.Contains("two to three years apart", StringComparison.Ordinal));
    }

    [Fact]
    public void Later_doses_have_their_day_when_the_first_is_known()
    {
        var split = Split(8000, InventedGround.Of() with { Start = new DateOnly(2026, 10, 15) });

        Assert.Equal([new DateOnly(2026, 10, 15), new DateOnly(2027, 4, 15)], split.Each.Select(d => d.Date));
        Assert.Equal([0, 6], split.Each.Select(d => d.MonthsFrom));
    }

    [Fact]
    public void Without_a_first_day_only_the_months_are_told() =>
        Assert.All(Split(8000, InventedGround.Of()).Each, d => Assert.Null(d.Date));

    [Fact]
    public void The_limit_of_the_own_region_and_texture_goes_first_and_counts_calcium_oxide()
    {
        // Poland (iung): 1.5 t CaO/ha on very light soil; times 100.09/56.08 is 2.677 t CaCO3/ha, 2388.5 lb/acre.
        var light = new DoseLimit("very-light", "Invented region", "PL", false, "field", [SoilGroup.Sand], 1.5m, "t-cao/ha", 12, 12, Source, null);
        var tables = InventedGround.Tables() with { DoseLimits = [InventedGround.Garden, light] };
        var ground = InventedGround.Of(tables: tables) with { Region = "PL", SoilGroup = SoilGroup.Sand };

        Assert.Equal(2, Split(2400, ground).Each.Count);
        Assert.Single(Split(2380, ground).Each);
        Assert.Equal("garden", Split(2400, ground with { SoilGroup = null }).Limit!.Id);
        Assert.Equal("garden", Split(2400, ground with { Region = "US-PA" }).Limit!.Id);
    }

    [Fact]
    public void A_material_with_a_smaller_largest_rate_keeps_its_own()
    {
        var split = LimeDosing.For(MassPerArea.FromPoundsPerAcre(1000), Stone(871), InventedGround.Of(), InventedGround.Tables().DoseLimits);

        Assert.Null(split.Limit);
        Assert.Equal(2, split.Each.Count);
    }

    [Fact]
    public void Doses_of_a_bed_add_up_to_its_amount()
    {
        var split = Split(8000, InventedGround.Of(area: Area.FromSquareFeet(435.6)));

        Assert.Equal(80, split.Each.Sum(d => d.PerBed!.Value.Pounds), 6);
    }

    private static LimeDoses Split(double poundsPerAcre, LimeGround ground) => LimeDosing.For(MassPerArea.FromPoundsPerAcre(poundsPerAcre), Stone(4356), ground, ground.Tables.DoseLimits);

    private static OfferedMaterial Stone(decimal largest) => InventedMaterial.Offered(InventedMaterial.Of(
        "stone", "lime", InventedMaterial.Figure("neutralising-value", 100, "% CaCO3"), InventedMaterial.Figure("largest-single-rate", largest, "lb/acre"), InventedMaterial.Figure("wait-before-sowing", 0, "days")));
}
