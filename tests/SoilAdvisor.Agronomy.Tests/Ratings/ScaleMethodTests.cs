using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Tests.Ratings;

public sealed class ScaleMethodTests
{
    [Theory]
    [InlineData(null)]
    [InlineData(Extractant.Water)]
    [InlineData(Extractant.Mehlich3)]
    public void Limits_that_name_no_extractant_take_any(Extractant? extractant) =>
        Assert.True(new ScaleMethod(null, ScaleDetection.Any, null).Covers(new Method(extractant, null, null, Basis.Element)));

    [Theory]
    [InlineData(Extractant.Water, true)]
    [InlineData(Extractant.Olsen, false)]
    [InlineData(null, false)]
    public void Limits_that_name_one_take_that_alone(Extractant? extractant, bool taken) =>
        Assert.Equal(taken, new ScaleMethod(Extractant.Water, ScaleDetection.Any, null).Covers(new Method(extractant, null, null, Basis.Element)));
}
