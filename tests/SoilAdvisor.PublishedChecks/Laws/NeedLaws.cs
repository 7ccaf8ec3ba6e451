using CsCheck;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.PublishedChecks.Laws;

public sealed class NeedLaws
{
    private static readonly (Analyte Analyte, PlantNutrient Nutrient)[] RatedNutrients =
        [(Analyte.P, PlantNutrient.P2O5), (Analyte.K, PlantNutrient.K2O), (Analyte.Mg, PlantNutrient.Mg)];

    public static IEnumerable<object[]> Pairs =>
        TablesUnderTest.Current.RateTables.Values.SelectMany(t => t.Pairs.Select(p => new object[] { p.Guide, t.Id }));

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_higher_soil_test_never_raises_the_need_of_a_crop_on_a_texture(string guideId, string rateTableId)
    {
        var tables = TablesUnderTest.Current;
        var guide = tables.Guides[guideId];
        var table = tables.RateTables[rateTableId];
        var compared = 0;
        foreach (var crop in tables.Crops.Values.Where(c => table.Kind == RateTableKind.BuildUpAndMaintenance || table.Rates.Any(r => r.Crop == c.Id)))
        {
            foreach (var (analyte, nutrient) in RatedNutrients)
            {
                foreach (var scale in guide.Scales.Where(s => s.Analyte == analyte))
                {
                    Gen.Select(ValueOn(scale), ValueOn(scale), Cec, Texture).Sample(
                        (a, b, cec, texture) =>
                        {
                            var low = Need(guide, scale, crop, nutrient, Math.Min(a, b), cec, texture);
                            var high = Need(guide, scale, crop, nutrient, Math.Max(a, b), cec, texture);
                            if (low is null || high is null)
                            {
                                return true;
                            }

                            Interlocked.Increment(ref compared);
                            return high.Value.Low <= low.Value.Low && high.Value.High <= low.Value.High;
                        },
                        iter: 10,
                        print: x => $"{guideId}, {rateTableId}, {crop.Id} {nutrient}: {x.Item1} and {x.Item2} {scale.Unit}, CEC {x.Item3}, {x.Item4}");
                }
            }
        }

        Assert.NotEqual(0, compared);
    }

    private static Gen<decimal> Cec { get; } = Gen.Int[1, 400].Select(tenths => tenths / 10m);

    private static Gen<SoilGroup> Texture { get; } = Gen.Int[0, Enum.GetValues<SoilGroup>().Length - 1].Select(i => (SoilGroup)i);

    private static Gen<decimal> ValueOn(RatingScale scale)
    {
        var top = scale.Classes.SelectMany(c => new[] { c.Lower, c.Upper }).OfType<decimal>().DefaultIfEmpty(100m).Max();
        return Gen.Int[0, (int)Math.Ceiling(top * 20)].Select(tenths => tenths / 10m);
    }

    private static RateRange? Need(Guide guide, RatingScale scale, Crop crop, PlantNutrient nutrient, decimal value, decimal cec, SoilGroup texture)
    {
        var tables = TablesUnderTest.Current;
        Detection? detection = scale.Method.Detection switch
        {
            ScaleDetection.Icp => Detection.Icp,
            ScaleDetection.Colorimetric => Detection.Colorimetric,
            _ => null,
        };
        var reading = new Reading(scale.Analyte, Amount.Measured(value), scale.Unit, new Method(scale.Method.Extractant, detection, scale.Method.Procedure, Basis.Element), "law");
        var exchange = new Reading(Analyte.CationExchangeCapacity, Amount.Measured(cec), ReportingUnit.MilliequivalentsPer100Grams, Method.By(null), "law");
        var test = new SoilTest("law", null, null, null, texture, null, null, [reading, exchange], []);
        var rating = guide.Rate(test, reading, new RatingContext(scale.CropGroup, texture, scale.Subregion));
        if (!rating.IsGiven)
        {
            return null;
        }

        var planting = new Planting(crop, null, null, null, crop.Removals.Count > 0 ? new ExpectedYield(10m, "short-ton/acre") : null, null);
        return NeedCalculation.For(test, guide, tables.RateTables, [rating.Value], [planting], [], tables.CoverCrops, null)
            .Needs.FirstOrDefault(n => n.Nutrient == nutrient)?.Rate;
    }
}
