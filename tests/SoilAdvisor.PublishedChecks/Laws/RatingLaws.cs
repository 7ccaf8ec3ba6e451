using CsCheck;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.PublishedChecks.Laws;

public sealed class RatingLaws
{
    public static TheoryData<string> Guides => [.. TablesUnderTest.Current.Guides.Keys];

    [Theory]
    [MemberData(nameof(Guides))]
    public void A_higher_value_is_never_rated_in_a_lower_class(string id)
    {
        var guide = TablesUnderTest.Current.Guides[id];
        foreach (var scale in guide.Scales)
        {
            Gen.Select(ValueOn(scale), ValueOn(scale), Cec).Sample(
                (a, b, cec) =>
                {
                    var lower = Rate(guide, scale, Math.Min(a, b), cec);
                    var higher = Rate(guide, scale, Math.Max(a, b), cec);
                    return lower is null || higher is null || lower.ClassIndex <= higher.ClassIndex;
                },
                iter: 300,
                print: x => $"{id}, {scale.Analyte} {scale.CropGroup} {scale.Subregion}: {x.Item1} and {x.Item2} {scale.Unit}, CEC {x.Item3}");
        }
    }

    [Theory]
    [MemberData(nameof(Guides))]
    public void A_scale_that_rates_leaves_no_value_without_a_class(string id)
    {
        var guide = TablesUnderTest.Current.Guides[id];
        foreach (var scale in guide.Scales.Where(s => s.Classes.All(c => c.Standing != Standing.Information)))
        {
            Gen.Select(ValueOn(scale), Cec).Sample(
                (value, cec) => Rate(guide, scale, value, cec) is not null,
                iter: 300,
                print: x => $"{id}, {scale.Analyte} {scale.CropGroup} {scale.Subregion}: {x.Item1} {scale.Unit}, CEC {x.Item2}");
        }
    }

    private static Gen<decimal> Cec { get; } = Gen.Int[1, 400].Select(tenths => tenths / 10m);

    // Half of the values lie within a hundredth of a printed limit, where a scale can go wrong; the rest anywhere up to three times the last.
    private static Gen<decimal> ValueOn(RatingScale scale)
    {
        decimal[] limits = [0m, .. scale.Classes.SelectMany(c => new[] { c.Lower, c.Upper }).OfType<decimal>()];
        var top = (int)Math.Ceiling(limits.Max() * 300) + 100;
        var near = Gen.Select(Gen.Int[0, limits.Length - 1].Select(i => limits[i]), Gen.Int[-1, 1], (limit, step) => Math.Max(0, limit + (step / 100m)));
        return Gen.OneOf(near, Gen.Int[0, top].Select(hundredths => hundredths / 100m));
    }

    private static Rating? Rate(Guide guide, RatingScale scale, decimal value, decimal cec)
    {
        var test = FittingTest.For(scale, value, cec);
        var answer = guide.Rate(test, test.Readings[0], new RatingContext(scale.CropGroup, test.SoilGroup, scale.Subregion));
        return answer.IsGiven && ReferenceEquals(answer.Value.Scale, scale) ? answer.Value : null;
    }
}
