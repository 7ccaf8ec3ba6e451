using CsCheck;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Composting;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.Composting;

public sealed class CompostRecipeTests
{
    private static readonly Gen<Feedstock> Feedstocks = Gen.Select(Gen.Double[1, 500], Gen.Double[20, 55], Gen.Double[0.1, 8], Gen.Double[5, 90])
        .Select((wet, carbon, nitrogen, moisture) => new Feedstock(Mass.FromPounds(wet), MassShare.FromPercent(carbon), MassShare.FromPercent(nitrogen), MassShare.FromPercent(moisture)));

    [Fact]
    public void The_ratio_of_a_mix_lies_between_those_of_its_feedstocks() =>
        Feedstocks.Array[2, 12].Sample(heap =>
        {
            var ratios = heap.Select(f => f.Carbon.Fraction / f.Nitrogen.Fraction).ToList();
            Assert.InRange(CompostFormulas.CarbonToNitrogenOfMix.Of(heap).Value, ratios.Min() * (1 - 1e-9), ratios.Max() * (1 + 1e-9));
        });

    [Fact]
    public void The_second_feedstock_brings_the_mix_to_what_was_wanted() =>
        Gen.Select(Feedstocks, Feedstocks, Gen.Double[0.05, 0.95]).Sample((first, second, part) =>
        {
            var (a, b) = (first.Carbon.Fraction / first.Nitrogen.Fraction, second.Carbon.Fraction / second.Nitrogen.Fraction);
            if (Math.Abs(a - b) < 1)
            {
                return;
            }

            var wanted = new Coefficient(a + ((b - a) * part));
            var found = CompostFormulas.SecondForCarbonToNitrogen.Of((first, second, wanted));

            Assert.Equal(wanted.Value, CompostFormulas.CarbonToNitrogenOfMix.Of([first, second with { Wet = found }]).Value, 1e-6 * wanted.Value);
        });

    [Theory]
    [InlineData(50, 77, 35)]
    [InlineData(34.9, 77, 35)]
    [InlineData(77.1, 77, 35)]
    public void A_moisture_outside_the_two_feedstocks_has_no_recipe(double wanted, double first, double second)
    {
        var answer = CompostFormulas.SecondForMoisture.Calculate(new Dictionary<string, double> { ["Q1"] = 10, ["G"] = wanted, ["M1"] = first, ["M2"] = second });

        Assert.Equal(wanted is >= 35 and <= 77, answer.IsGiven);
    }

    [Fact]
    public void As_many_feedstocks_as_are_named_are_counted_and_a_missing_number_is_named()
    {
        var inputs = new Dictionary<string, double> { ["Q1"] = 1, ["M1"] = 10, ["Q2"] = 1, ["M2"] = 20, ["Q4"] = 2, ["M4"] = 35 };

        var refused = CompostFormulas.MoistureOfMix.Calculate(inputs).Reason;
        Assert.Contains("Q3", refused.Message, StringComparison.Ordinal);

        inputs["Q3"] = 0;
        inputs["M3"] = 0;
        // (10 + 20 + 0 + 70) / 4 = 25.
        Assert.Equal(25, CompostFormulas.MoistureOfMix.Calculate(inputs).Value, 1e-9);
    }

    [Fact]
    public void More_feedstocks_than_a_heap_has_are_refused()
    {
        var inputs = Enumerable.Range(1, 13).SelectMany(i => new[] { ($"Q{i}", 1.0), ($"M{i}", 50.0) }).ToDictionary(p => p.Item1, p => p.Item2);

        Assert.Contains("\"Q13\" is not a symbol", CompostFormulas.MoistureOfMix.Calculate(inputs).Reason.Message, StringComparison.Ordinal);
    }

    // 7 CFR 205.203(c)(2)(ii): between 131 °F and 170 °F.
    [Theory]
    [InlineData(130.9, 0)]
    [InlineData(131, 3)]
    [InlineData(170, 3)]
    [InlineData(170.1, 0)]
    public void A_day_counts_from_131_to_170_degrees(double fahrenheit, int days)
    {
        var log = Enumerable.Range(1, 3).ToDictionary(i => $"T{i}", _ => fahrenheit);

        Assert.Equal(days, TemperatureLogFormulas.DaysInHeat.Calculate(log).Value);
    }

    [Fact]
    public void Days_to_harvest_are_those_of_the_calendar() =>
        Gen.Select(Gen.Int[0, 40000], Gen.Int[0, 300]).Sample((start, length) =>
        {
            var workedIn = new DateOnly(1990, 1, 1).AddDays(start);
            var harvest = workedIn.AddDays(length);
            var year = harvest.Year == workedIn.Year ? 0 : DateTime.IsLeapYear(workedIn.Year) ? 366 : 365;
            var inputs = new Dictionary<string, double> { ["H"] = harvest.DayOfYear, ["I"] = workedIn.DayOfYear, ["Y"] = year };

            Assert.Equal(length, IntervalFormulas.DaysToHarvest.Calculate(inputs).Value, 1e-9);
        });
}
