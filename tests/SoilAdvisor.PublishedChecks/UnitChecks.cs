using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.PublishedChecks;

public sealed class UnitChecks
{
    public static TheoryData<PublishedExample> Examples => PublishedExamples.Of("units");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_rate_converts_as_printed(PublishedExample example)
    {
        var given = example.GivenAs<PrintedNumber>();
        var expected = example.ExpectedAs<PrintedNumber>();
        var rate = given.Unit switch
        {
            "lb/acre" => MassPerArea.FromPoundsPerAcre(given.Value),
            "kg/ha" => MassPerArea.FromKilogramsPerHectare(given.Value),
            _ => throw new InvalidOperationException($"{example}: unit {given.Unit}."),
        };

        var got = expected.Unit switch
        {
            "lb/acre" => rate.PoundsPerAcre,
            "kg/ha" => rate.KilogramsPerHectare,
            _ => throw new InvalidOperationException($"{example}: unit {expected.Unit}."),
        };

        example.AgreesWith(expected.Value, got);
    }
}
