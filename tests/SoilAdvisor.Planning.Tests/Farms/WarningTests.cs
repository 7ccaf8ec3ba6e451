using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Planning.Tests.Farms;

public class WarningTests
{
    private static readonly MaterialOffer[] Shelf = [Farm.Offer("feather-meal", 0.9m), Farm.Offer("bone-meal-steamed", 0.8m), Farm.Offer("potassium-sulfate", 0.9m)];

    [Theory]
    [InlineData("2023-11-24", false)]
    [InlineData("2023-11-23", true)]
    public void A_soil_test_older_than_three_years_is_warned_of(string sampled, bool warned) =>
        Assert.Equal(warned, Says(Farm.Bed("b", Farm.Test(80, 300, sampled: DateOnly.Parse(sampled, System.Globalization.CultureInfo.InvariantCulture)), "spinach"), "more than 3 years"));

    [Fact]
    public void A_soil_test_without_a_date_is_warned_of() =>
        Assert.True(Says(Farm.Bed("b", Farm.Test(80, 300) with { Sampled = null }, "spinach"), "has no sampling date"));

    [Fact]
    public void A_soil_test_from_after_the_plan_is_warned_of() =>
        Assert.True(Says(Farm.Bed("b", Farm.Test(80, 300, sampled: new DateOnly(2026, 11, 25)), "spinach"), "after the date of this plan"));

    [Theory]
    [InlineData(3333, true)]
    [InlineData(1000, false)]
    public void A_heavy_spreading_after_sampling_is_warned_of(double poundsPerAcre, bool warned)
    {
        // Composted poultry litter: 5.2 % total P2O5, so 3333 lb bring 173 lb and 1000 lb bring 52 lb against our limit of 100.
        var bed = Farm.Bed("b", Farm.Test(80, 300), "spinach");
        var material = Farm.Tables.Material("poultry-composted").Value;
        var applied = new AppliedMaterial(material, MaterialAnalyses.For(material, null, null).Value, MassPerArea.FromPoundsPerAcre(poundsPerAcre).On(bed.Area), new DateOnly(2026, 10, 1), null);
        Assert.Equal(warned, Says(bed with { Applied = [applied] }, "before a heavy spreading"));
    }

    [Theory]
    [InlineData(100, true)]
    [InlineData(101, false)]
    public void Water_near_a_bed_that_is_spread_is_warned_of(double feet, bool warned) =>
        Assert.Equal(warned, Says(Farm.Bed("b", Farm.Test(80, 300), "spinach") with { WaterWithinFeet = feet }, "Water or a well"));

    [Theory]
    [InlineData(7.4, null, false)]
    [InlineData(7.5, null, true)]
    [InlineData(6.5, true, true)]
    [InlineData(6.5, false, false)]
    public void An_acid_extractant_on_limy_soil_is_warned_of(double ph, bool? freeLime, bool warned) =>
        Assert.Equal(warned, Says(Farm.Bed("b", Farm.Test(80, 300, (decimal)ph, freeLime: freeLime), "spinach"), "Ask the laboratory for an Olsen test"));

    [Theory]
    [InlineData("tomato", true)]
    [InlineData("spinach", false)]
    public void Nitrogen_that_may_pass_the_guides_range_is_warned_of(string crop, bool warned)
    {
        // Feather meal releases 60 to 90 %. Tomato asks for 75 to 80 lb: 75 × 90 / 60 = 112.5 lb. Spinach asks for 80 to 125 lb: 80 × 90 / 60 = 120 lb.
        var warnings = Farm.PlanOne(Farm.Bed("b", Farm.Test(60, 300), crop), Farm.Offer("feather-meal", 0.05m)).Warnings;
        Assert.Equal(warned, warnings.Any(w => w.Contains("At the high end", StringComparison.Ordinal)));
        Assert.Equal(warned, warnings.Any(w => w.Contains("above the limit of 80 lb/acre", StringComparison.Ordinal)));
    }

    [Fact]
    public void Phosphate_far_above_need_is_warned_of()
    {
        // Composted litter as the only nitrogen: 5.2 % total P2O5 for 3.2 % × 0.15 of nitrogen.
        var bed = Farm.Bed("b", Farm.Test(60, 300), "spinach");
        Assert.Contains(Farm.PlanOne(bed, Farm.Offer("poultry-composted", 0.05m)).Warnings, w => w.Contains("of total P2O5 against a need of", StringComparison.Ordinal));
        Assert.DoesNotContain(Farm.PlanOne(Farm.Bed("b", Farm.Test(400, 400), "spinach"), Shelf).Warnings, w => w.Contains("of total P2O5 against a need of", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2026-12-08", false)]
    [InlineData("2026-12-07", true)]
    public void A_last_day_of_spreading_that_is_past_is_warned_of(string planted, bool warned)
    {
        // Feather meal waits 14 days; the plan is of 24 November 2026.
        var bed = Farm.Bed("b", Farm.Test(400, 400), "spinach");
        var day = DateOnly.Parse(planted, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(warned, Says(bed with { Plantings = [bed.Plantings[0] with { Planted = day }] }, "is past"));
    }

    [Fact]
    public void A_guide_calibrated_on_field_crops_is_warned_of()
    {
        var guide = Farm.Tables.Guides.Values.First(g => g.CalibratedOn == "field-crops" && g.Rate(Farm.Test(80, 300), Farm.Test(80, 300).Readings[0], default).IsGiven);
        var plan = Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(80, 300), "spinach")], Shelf) with { Guide = guide });
        Assert.Contains(plan.Warnings, w => w.Contains("calibrated on field crops", StringComparison.Ordinal));
        Assert.DoesNotContain(Farm.Plan(Farm.Request([Farm.Bed("b", Farm.Test(80, 300), "spinach")], Shelf)).Warnings, w => w.Contains("field crops", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(120, SoilContact.Contact, true)]
    [InlineData(119, SoilContact.Contact, false)]
    [InlineData(90, SoilContact.NoContact, true)]
    [InlineData(89, SoilContact.NoContact, false)]
    public void Raw_manure_is_used_only_when_its_days_to_harvest_are_kept(int days, SoilContact contact, bool used)
    {
        // 7 CFR 205.203(c)(1): 120 days where the edible part touches the soil, 90 where it does not, counted from the day of spreading.
        var bed = Farm.Bed("b", Farm.Test(14, 60), "spinach");
        var wait = OfferedMaterials.For(Farm.Tables.Material("horse-fresh").Value, MaterialAnalyses.For(Farm.Tables.Material("horse-fresh").Value, null, null).Value, null, null, null, true).Value.WaitBeforeSowingDays;
        var planted = new DateOnly(2027, 5, 1);
        var planting = bed.Plantings[0] with { Planted = planted, FirstHarvest = planted.AddDays(days - wait), SoilContact = contact };
        var plan = Farm.PlanOne(bed with { Plantings = [planting] }, Farm.Offer("horse-fresh", 0.001m));
        Assert.Equal(used, plan.Applications.Any(a => a.Offered.Material.Id == "horse-fresh"));
        Assert.Equal(used, !plan.Warnings.Any(w => w.Contains("raw manure needs", StringComparison.Ordinal)));
    }

    [Fact]
    public void Raw_manure_without_a_harvest_date_is_left_out_and_said()
    {
        var bed = Farm.Bed("b", Farm.Test(14, 60), "spinach");
        var plan = Farm.PlanOne(bed with { Plantings = [bed.Plantings[0] with { FirstHarvest = null }] }, Farm.Offer("horse-fresh", 0.001m));
        Assert.Empty(plan.Applications);
        Assert.Contains(plan.Warnings, w => w.Contains("first harvest of Spinach is not known", StringComparison.Ordinal));
    }

    private static bool Says(Bed bed, string words) => Farm.PlanOne(bed, Shelf).Warnings.Any(w => w.Contains(words, StringComparison.Ordinal));
}
