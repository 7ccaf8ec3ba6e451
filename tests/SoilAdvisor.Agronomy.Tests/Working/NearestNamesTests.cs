using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Working;

public sealed class NearestNamesTests
{
    private static readonly string[] Crops = ["cabbage", "carrot", "cauliflower", "celery", "cucumber", "summer-squash"];

    [Fact]
    public void A_slip_of_the_finger_finds_its_crop() => Assert.Equal("cabbage", NearestNames.Of("cabage", Crops)[0]);

    [Fact]
    public void A_part_of_a_name_finds_it() => Assert.Contains("summer-squash", NearestNames.Of("squash", Crops));

    [Fact]
    public void A_word_like_nothing_known_offers_nothing() => Assert.Empty(NearestNames.Of("xqzjkvwp", Crops));

    [Fact]
    public void A_very_long_word_is_answered_at_once() => Assert.Empty(NearestNames.Of(new string('z', 1_000_000), Crops));
}
