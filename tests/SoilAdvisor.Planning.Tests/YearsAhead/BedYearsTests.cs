using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Planning.Tests.Farms;

namespace SoilAdvisor.Planning.Tests.YearsAhead;

public class BedYearsTests
{
    private static readonly MaterialOffer[] Shelf =
    [
        Farm.Offer("feather-meal", 0.9m), Farm.Offer("bone-meal-steamed", 0.8m), Farm.Offer("potassium-sulfate", 0.9m), Farm.Offer("dairy-composted", 0.03m), Farm.Offer("calcitic-lime", 0.1m),
    ];

    [Fact]
    public void Nobody_asked_and_low_tests_get_five_years_which_is_said_while_tests_at_target_get_none()
    {
        var low = Farm.PlanOne(Farm.Bed("b", Farm.Test(14, 60), "cabbage"), Shelf);
        Assert.Equal(5, low.YearsAhead!.Years);
        Assert.Equal([0, 1, 2, 3, 4, 5], low.YearsAhead.Phosphorus!.Value.Value.Projection.Years.Select(y => y.Year));
        Assert.True(low.YearsAhead.Potassium!.Value.IsGiven);
        Assert.Contains(low.Assumptions, a => a.Code == "years-not-given");
        Assert.Contains(low.Assumptions, a => a.Code == "plan-repeats");

        var atTarget = Farm.PlanOne(Farm.Bed("b", Farm.Test(75, 200), "cabbage"), Shelf);
        Assert.All(atTarget.Ratings.Where(r => r.Analyte is Analyte.P or Analyte.K), r => Assert.Equal(Standing.Target, r.Standing));
        Assert.Null(atTarget.YearsAhead);
        Assert.DoesNotContain(atTarget.Assumptions, a => a.Code == "years-not-given");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    public void Who_asks_gets_his_years_of_both(int years)
    {
        var bed = Asked(Farm.Bed("b", Farm.Test(75, 200), "cabbage"), years, Shelf);
        Assert.All(bed.YearsAhead!.Outlooks, o => Assert.Equal(years, o.Value.Projection.Years[^1].Year));
        Assert.Equal(2, bed.YearsAhead.Outlooks.Count());
        Assert.DoesNotContain(bed.Assumptions, a => a.Code == "years-not-given");
    }

    [Fact]
    public void A_year_moves_the_test_by_what_is_spread_less_what_is_harvested_over_the_pounds_for_one_unit()
    {
        // 20 short tons of cabbage at 1.5 lb/ton (New England table) take 30 lb P2O5.
        var bed = Asked(Yielding("cabbage", 20), 3, Shelf);
        var outlook = bed.YearsAhead!.Phosphorus!.Value.Value;
        Assert.Equal(30, outlook.Removed.PoundsPerAcre, 1e-9);
        var low = bed.Applications.Sum(a => a.Rate.PoundsPerAcre * a.Offered.Analysis.Share(Nutrient.TotalP2O5));
        var high = bed.Applications.Sum(a => a.Rate.PoundsPerAcre * a.Offered.Analysis.High.GetValueOrDefault(Nutrient.TotalP2O5));
        Assert.Equal((low + high) / 2, outlook.Applied.PoundsPerAcre, 1e-6);
        Assert.Equal(14 + (3 * ((((low + high) / 2) - 30) / 20)), outlook.Projection.Years[3].Likely.MilligramsPerKilogram, 1e-6);
    }

    [Fact]
    public void Without_a_yield_the_part_is_refused_and_says_which_yield_to_give()
    {
        var crop = Farm.Tables.Crops.Values.First(c => c.Removals.Any(r => r.Part == "harvested" && r.P2O5 is not null && r.Unit != "lb/bu") && c.Values.All(v => v.Property != "typical-yield"));
        var outlook = Asked(Farm.Bed("b", Farm.Test(14, 60), crop.Id), 5, Shelf).YearsAhead!.Phosphorus!.Value;
        Assert.Equal("yield-needed", outlook.Reason.Code);
        Assert.Contains(crop.Name, outlook.Reason.Message, StringComparison.Ordinal);
        Assert.Contains("yield", outlook.Reason.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void At_the_rate_that_holds_the_projection_is_flat_to_rounding()
    {
        var bed = Asked(Yielding("cabbage", 20), 5, Shelf);
        var hold = bed.YearsAhead!.HoldRates.Single(h => h.Offered.Material.Id == "dairy-composted");
        var analysis = hold.Offered.Analysis;
        var supplied = hold.Rate.PoundsPerAcre * (analysis.Share(Nutrient.TotalP2O5) + analysis.High[Nutrient.TotalP2O5]) / 2;
        Assert.Equal(30, supplied, 1e-9);
        Assert.True(hold.Low <= hold.Rate && hold.Rate <= hold.High);
        Assert.Equal(hold.Rate.PoundsPerAcre * analysis.Share(Nutrient.AvailableN), hold.Nitrogen.PoundsPerAcre, 1e-9);

        var projection = Projections.OfPhosphorus(
            bed.YearsAhead.Phosphorus!.Value.Value.Projection.Test,
            Farm.Tables.TestMovements.OfPhosphorus(Extractant.Mehlich3, "US-DE").Value,
            new YearlyBalance<TotalP2O5>(Pounds(supplied), Pounds(supplied), default, default, Pounds(30)),
            20).Value;
        Assert.All(projection.Years, y => Assert.Equal(14, y.Likely.MilligramsPerKilogram, 1e-9));
    }

    [Fact]
    public void A_soil_below_its_target_is_told_when_it_gets_there_or_that_it_never_does()
    {
        var fed = Asked(Yielding("cabbage", 20), 20, Shelf).YearsAhead!.Phosphorus!.Value.Value;
        Assert.Equal("where the target begins", fed.Reaches!.What);
        Assert.NotNull(fed.Reaches.By.Likely);

        var starved = Asked(Yielding("cabbage", 20), 20, Farm.Offer("feather-meal", 0.9m)).YearsAhead!.Phosphorus!.Value.Value;
        Assert.Null(starved.Reaches!.By.Likely);
        Assert.Contains(starved.Words, w => w.Value.StartsWith("It never reaches", StringComparison.Ordinal) && w.Value.EndsWith("with this plan: spread more than the harvests take.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_soil_far_above_is_told_how_long_it_takes_by_the_balance_and_by_the_fields_that_were_watched()
    {
        var bed = Asked(Yielding("cabbage", 20, 400), 10, Shelf);
        var outlook = bed.YearsAhead!.Phosphorus!.Value.Value;
        Assert.Equal("where the target ends", outlook.Reaches!.What);
        Assert.True(outlook.Reaches.By.Earliest < outlook.Reaches.By.Likely);
        Assert.Contains(outlook.Words, w => w.Source.SourceId == "drawdown-56-fields-2025");
        Assert.Empty(bed.YearsAhead.HoldRates);
        Assert.Contains("stop limit", bed.YearsAhead.WithoutPhosphorus!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Pounds_carried_over_to_another_extractant_are_said_and_where_there_are_none_nothing_is_projected()
    {
        Assert.Contains(Asked(Yielding("cabbage", 20), 5, Shelf).Assumptions, a => a.Code == "pounds-for-one-unit" && a.Text.Contains("printed for bray-p1 and is carried over to mehlich-3", StringComparison.Ordinal));

        var morgan = Farm.Test(14, 60) with { Readings = [.. Farm.Test(14, 60).Readings.Select(r => r.Method.Extractant is null ? r : r with { Method = Method.Extracted(Extractant.ModifiedMorgan, Detection.Icp) })] };
        var plan = Farm.Plan(Farm.Request([Yields(Farm.Bed("b", morgan, "cabbage"), 20)], Shelf) with { Region = "US-VT", Years = 5 });
        Assert.Equal("movement-not-held", plan.Beds[0].YearsAhead!.Phosphorus!.Value.Reason.Code);
    }

    [Fact]
    public void At_the_stop_limit_of_any_guide_no_manure_or_compost_brings_phosphorus_and_just_below_it_may()
    {
        var seen = 0;
        foreach (var guide in Farm.Tables.Guides.Values)
        {
            foreach (var scale in guide.Scales.Where(s => s is { Analyte: Analyte.P, Index: null, Unit: ReportingUnit.MilligramsPerKilogram, NeedsCec: false } && s.Conditions.Count == 0 && s.Method.Extractant is not null))
            {
                var stop = Enumerable.Range(0, scale.Classes.Count).FirstOrDefault(i => scale.Classes[i].Standing == Standing.Stop, -1);
                if (stop < 0 || scale.LowerOf(stop, null) is not { } limit)
                {
                    continue;
                }

                var test = Farm.Test(limit + 1, 200, extractant: scale.Method.Extractant!.Value);
                var request = Farm.Request([Farm.Bed("b", test, "cabbage")], [.. Shelf, Farm.Offer("litter-broiler-raw"), Farm.Offer("poultry-composted")]) with { Guide = guide, Region = guide.Regions.FirstOrDefault() };
                if (!FarmPlanner.Plan(request, Farm.Tables, CancellationToken.None).TryGet(out var plan, out _) || plan.Beds[0].Ratings.All(r => r.Analyte != Analyte.P || r.Standing != Standing.Stop))
                {
                    continue;
                }

                seen++;
                var bed = plan.Beds[0];
                Assert.DoesNotContain(bed.Applications, a => a.Offered.Material.Category is "manure" or "processed-manure" or "compost");
                Assert.True(bed.Applications.Sum(a => a.Rate.PoundsPerAcre * a.Offered.Analysis.Share(Nutrient.TotalP2O5)) <= 5 * (1 + 1e-9), $"{guide.Id}: {bed.Summary}");
                Assert.NotNull(bed.YearsAhead?.WithoutPhosphorus);
            }
        }

        Assert.True(seen >= 3, $"Only {seen} stop limits could be tried.");
    }

    internal static Bed Yields(Bed bed, decimal tons) => bed with { Plantings = [.. bed.Plantings.Select(p => p with { ExpectedYield = new ExpectedYield(tons, "short-ton/acre") })] };

    private static Bed Yielding(string crop, decimal tons, decimal p = 14) => Yields(Farm.Bed("b", Farm.Test(p, 60), crop), tons);

    private static BedPlan Asked(Bed bed, int years, params MaterialOffer[] materials) => Farm.Plan(Farm.Request([bed], materials) with { Years = years }).Beds[0];

    private static Rate<TotalP2O5> Pounds(double value) => Rate<TotalP2O5>.FromPoundsPerAcre(value);
}
