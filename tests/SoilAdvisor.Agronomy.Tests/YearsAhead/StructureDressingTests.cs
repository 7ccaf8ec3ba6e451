using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.YearsAhead;

public sealed class StructureDressingTests
{
    // 0.44 % P2O5 as spread: 0.8 % of dry matter at 45 % water. 1000 lb for a cubic yard.
    private static readonly OfferedMaterial Compost = Offered("compost", 1000);

    [Fact]
    public void An_inch_lays_down_more_phosphate_than_many_harvests_take()
    {
        // 43,560 sq ft / 324 sq ft for a cubic yard at one inch × 1000 lb × 0.44 % = 592 lb; 40 lb leave in a year.
        var dressing = StructureDressings.Of(new StructureAsked("compost", null, Length.FromInches(1)), Compost, new StructureLimits(null, null, false, null), InventedYears.Rate(40), InventedYears.Moves()).Value;
        Assert.Equal(592, dressing.Phosphate.PoundsPerAcre, 0.5);
        Assert.Equal(14.8, dressing.YearsOfRemoval!.Value, 0.05);
        Assert.Equal(29.6, dressing.Rise!.Value.Likely.Value, 0.05);
        Assert.Equal(29.6 / 1.5, dressing.Rise.Value.Low.Value, 0.05);
        Assert.Equal(29.6 * 1.5, dressing.Rise.Value.High.Value, 0.05);
        Assert.Null(dressing.LimitedBy);
    }

    [Theory]
    [InlineData(44, 10_000, null)]
    [InlineData(43.9, 9977.27, "removal")]
    public void Both_sides_of_the_phosphate_that_it_may_lay_down(double most, double pounds, string? why)
    {
        var dressing = Limited(10_000, new StructureLimits(MassPerArea.FromPoundsPerAcre(most), "removal", false, null)).Value;
        Assert.Equal(pounds, dressing.Rate.PoundsPerAcre, 0.01);
        Assert.Equal(why is not null, dressing.LimitedBy?.EndsWith(": removal", StringComparison.Ordinal) ?? false);
    }

    [Theory]
    [InlineData(200_000, 200_000, false)]
    [InlineData(200_001, 200_000, true)]
    public void Both_sides_of_the_largest_single_rate(double asked, double given, bool limited)
    {
        var dressing = Limited(asked, new StructureLimits(null, null, false, null)).Value;
        Assert.Equal(given, dressing.Rate.PoundsPerAcre, 1e-6);
        Assert.Equal(limited, dressing.LimitedBy is not null);
    }

    [Fact]
    public void A_cap_of_the_material_holds_here_too()
    {
        var dressing = Limited(10_000, new StructureLimits(null, null, false, new RateCap(MassPerArea.FromPoundsPerAcre(4000), "limit of the certifier", Citation.OurJudgement))).Value;
        Assert.Equal((4000, "limit of the certifier"), (Math.Round(dressing.Rate.PoundsPerAcre, 6), dressing.LimitedBy));
    }

    [Theory]
    [InlineData("manure", 1000, false, 1000, "structure-not-compost")]
    [InlineData("compost", 1000, true, 1000, "structure-at-stop-limit")]
    [InlineData("compost", 1000, false, 0, "structure-no-room")]
    [InlineData("compost", null, false, 1000, "structure-depth-without-density")]
    public void What_cannot_be_spread_is_refused_with_a_way_out(string category, int? density, bool atStop, double most, string code)
    {
        var answer = StructureDressings.Of(
            new StructureAsked("compost", density is null ? null : MassPerArea.FromPoundsPerAcre(5000), density is null ? Length.FromInches(1) : null),
            Offered(category, density),
            new StructureLimits(MassPerArea.FromPoundsPerAcre(most), "the limit", atStop, null),
            null,
            null);
        Assert.Equal(code, answer.Reason.Code);
        Assert.NotEqual("", answer.Reason.Suggestion);
    }

    private static Answer<StructureDressing> Limited(double pounds, StructureLimits limits) =>
        StructureDressings.Of(new StructureAsked("compost", MassPerArea.FromPoundsPerAcre(pounds), null), Compost, limits, null, null);

    private static OfferedMaterial Offered(string category, int? poundsPerCubicYard)
    {
        var seen = new Citation("invented", null, Evidence.Seen);
        MaterialValue[] values = poundsPerCubicYard is { } density ? [new MaterialValue("bulk-density", density, null, null, "lb/cubic-yard", seen, null)] : [];
        var material = new Material("compost", "Invented compost", category, "as-spread", ManureKind.None, OrganicStatus.Allowed, "none", true, [], values, [], seen, null);
        var shares = new Dictionary<Nutrient, double> { [Nutrient.TotalP2O5] = 0.0044 };
        return new OfferedMaterial(material, new MaterialAnalysis(shares, shares, new Dictionary<Nutrient, IReadOnlyList<Citation>>(), []), null, null, true, MassPerArea.FromPoundsPerAcre(200_000), 7);
    }
}
