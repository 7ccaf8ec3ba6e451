using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using LabReading = SoilAdvisor.Agronomy.SoilTests.Reading;

namespace SoilAdvisor.ReferenceTables.Tests.Crops;

/// <summary>Laws that every guide, rate table, crop and lime method of this repository keeps, whoever adds the next one.</summary>
public sealed class NeedLawTests
{
    private static readonly Tables Tables = Tables.Load(Tables.FindFolder(AppContext.BaseDirectory));

    private static readonly (Analyte Analyte, PlantNutrient Nutrient)[] Tested = [(Analyte.P, PlantNutrient.P2O5), (Analyte.K, PlantNutrient.K2O), (Analyte.Mg, PlantNutrient.Mg)];

    public static TheoryData<string> PairedGuides => [.. Tables.RateTables.Values.SelectMany(t => t.Pairs).Select(p => p.Guide).Distinct()];

    public static TheoryData<string> Crops => [.. Tables.Crops.Keys];

    [Theory]
    [MemberData(nameof(PairedGuides))]
    public void Need_never_rises_with_the_soil_test(string guideId)
    {
        var guide = Tables.Guides[guideId];
        var compared = 0;
        var tables = Tables.RateTables.Values.Where(t => t.PairWith(guideId) is not null).ToList();
        foreach (var crop in Tables.Crops.Values.Where(c => tables.Any(t => t.Parameters.Count > 0 ? c.Removals.Count > 0 : t.Rates.Any(r => r.Crop == c.Id))))
        {
            foreach (SoilGroup? soil in new SoilGroup?[] { null, SoilGroup.Sand, SoilGroup.Clay })
            {
                foreach (var (analyte, nutrient) in Tested)
                {
                    compared += NeverRises(guide, crop, soil, analyte, nutrient);
                }
            }
        }

        Assert.True(compared > 0, $"{guideId} advised nothing.");
    }

    [Theory]
    [MemberData(nameof(Crops))]
    public void Every_crop_gets_an_answer_or_a_reason_for_nitrogen(string crop)
    {
        var guide = Tables.Guides["delaware-vegetables"];

        var need = NeedCalculation.For(new SoilTest("s", null, null, null, SoilGroup.Loam, null, null, [], []), guide, Tables.RateTables, [], [Plant(Tables.Crops[crop])], [], Tables.CoverCrops, null);

        Assert.Equal(
            1,
            need.Needs.Count(n => n.Nutrient == PlantNutrient.N) + need.Refused.Count(r => r.Refusal.Message.Contains("nitrogen", StringComparison.Ordinal)));
        Assert.All(need.Needs, n => Assert.Contains(n.Source.SourceId, Tables.Sources.Keys));
    }

    [Fact]
    public void Every_formula_and_lime_method_stands_in_a_source_that_the_tables_hold()
    {
        Assert.All(Formulas.All, f => Assert.Contains(f.Source.SourceId, Tables.Sources.Keys));
        Assert.All(
            Tables.LimeMethods.Values.Where(m => m.Kind is LimeMethodKind.Equation or LimeMethodKind.TargetEquations),
            m => Assert.Contains(m.FormulaId, Formulas.All.Select(f => f.Id)));
    }

    [Fact]
    public void A_more_acid_soil_never_needs_less_lime_by_any_method()
    {
        var given = 0;
        foreach (var method in Tables.LimeMethods.Values)
        {
            foreach (var buffer in Steps(4.8m, 8.0m, 0.1m))
            {
                var mildest = default(Rate<CalciumCarbonate>);
                foreach (var ph in Steps(4.0m, 7.0m, 0.1m).Reverse())
                {
                    var answer = LimeRequirementCalculation.For(Acid(method, ph, buffer), new TargetPh(6.5m, null, null, method.Source), [method], method, null, [], null);
                    if (answer.IsGiven)
                    {
                        Assert.True(answer.Value.Rate >= mildest, $"{method.Id}: pH {ph}, buffer {buffer}");
                        mildest = answer.Value.Rate;
                        given++;
                    }
                }
            }
        }

        Assert.True(given > 0);
    }

    private static int NeverRises(Guide guide, Crop crop, SoilGroup? soil, Analyte analyte, PlantNutrient nutrient)
    {
        NutrientNeed? poorer = null;
        var compared = 0;
        foreach (var value in AroundLimits(guide, analyte))
        {
            var need = NeedOf(guide, crop, soil, analyte, value).Needs.FirstOrDefault(n => n.Nutrient == nutrient);
            if (need is not null && poorer is not null)
            {
                Assert.True(
                    need.Rate.Low <= poorer.Rate.Low && need.Rate.High <= poorer.Rate.High,
                    $"{guide.Id}, {crop.Id}, {soil}: {nutrient} rises from class {poorer.Class} to {need.Class} at {analyte} {value}.");
                compared++;
            }

            poorer = need ?? poorer;
        }

        return compared;
    }

    private static BedNeed NeedOf(Guide guide, Crop crop, SoilGroup? soil, Analyte analyte, decimal value)
    {
        var scale = guide.Scales.FirstOrDefault(s => s.Analyte == analyte);
        if (scale is null)
        {
            return new BedNeed([], [], [], []);
        }

        var method = new Method(scale.Method.Extractant, scale.Method.Detection == ScaleDetection.Colorimetric ? Detection.Colorimetric : Detection.Icp, scale.Method.Procedure, Basis.Element);
        var reading = new LabReading(analyte, Amount.Measured(value), scale.Unit, method, "test");
        var test = new SoilTest("s", null, null, null, soil, null, null, [reading, Cec], []);
        var rating = guide.Rate(test, reading, new RatingContext(scale.CropGroup, soil, scale.Subregion));
        return NeedCalculation.For(test, guide, Tables.RateTables, rating.IsGiven ? [rating.Value] : [], [Plant(crop)], [], Tables.CoverCrops, null);
    }

    // Just below, on and just above each limit of the guide, and a step between: a rate changes nowhere else.
    private static IEnumerable<decimal> AroundLimits(Guide guide, Analyte analyte) => guide.Scales
        .Where(s => s.Analyte == analyte)
        .Take(1)
        .SelectMany(s => Enumerable.Range(0, s.Classes.Count).Select(i => s.UpperOf(i, 8)).OfType<decimal>())
        .SelectMany(limit => new[] { limit / 2, limit - 0.01m, limit, limit + 0.51m })
        .Append(0)
        .Append(2000)
        .Order();

    private static SoilTest Acid(LimeMethod method, decimal ph, decimal buffer) => new("s", null, null, null, null, null, null,
    [
        new LabReading(Analyte.Ph, Amount.Measured(ph), ReportingUnit.PhUnits, Method.By(Procedure.PhWater11), "test"),
        new LabReading(Analyte.BufferPh, Amount.Measured(buffer), ReportingUnit.PhUnits, Method.By(method.Buffers.Count > 0 ? method.Buffers[0] : Procedure.BufferSmp), "test"),
        new LabReading(Analyte.Acidity, Amount.Measured(5), ReportingUnit.MilliequivalentsPer100Grams, default, "test"),
    ], []);

    private static LabReading Cec { get; } = new(Analyte.CationExchangeCapacity, Amount.Measured(8), ReportingUnit.MilliequivalentsPer100Grams, Method.By(Procedure.Summation), "test");

    private static Planting Plant(Crop crop) => new(crop, null, null, null, null, null);

    private static IEnumerable<decimal> Steps(decimal from, decimal to, decimal step)
    {
        for (var value = from; value <= to; value += step)
        {
            yield return value;
        }
    }
}
