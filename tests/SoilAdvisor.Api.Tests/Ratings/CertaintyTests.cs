namespace SoilAdvisor.Api.Tests.Ratings;

public sealed class CertaintyTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task Each_class_has_its_probability_and_together_they_are_certain()
    {
        var rating = await Rated("""{"analyte":"P","value":24,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""");

        var classes = rating["classProbabilities"]!.AsArray();
        Assert.Equal(["Low", "Medium", "Optimum", "Excessive"], classes.Select(c => (string?)c!["class"]));
        Assert.InRange(classes.Sum(c => (decimal)c!["probability"]!), 0.997m, 1.003m);
    }

    // Delaware prints Low 0-25 and Medium 26-50: 25 lies half a step below where they meet, 1 lies twenty times below it.
    [Fact]
    public async Task A_value_beside_a_limit_is_said_with_its_probability_and_one_far_from_it_is_not()
    {
        var beside = await Rated("""{"analyte":"P","value":25,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""");
        var far = await Rated("""{"analyte":"P","value":1,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""");

        Assert.Matches(@"Low .*\(\d+ %", (string?)beside["howSure"]);
        Assert.Equal("Low", (string?)far["howSure"]);
    }

    [Fact]
    public async Task The_likely_range_holds_the_value_and_is_in_the_unit_of_the_scale()
    {
        var likely = (await Rated("""{"analyte":"P","value":24,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}"""))["likely"]!;

        Assert.InRange(24m, (decimal)likely["low"]!, (decimal)likely["high"]!);
        Assert.Equal(("mg/kg", 0.8m), ((string?)likely["unit"], (decimal)likely["share"]!));
    }

    [Fact]
    public async Task Less_than_gives_bounds_and_no_single_probability()
    {
        var rating = await Rated("""{"analyte":"P","value":5,"comparator":"<","unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""");

        Assert.All(rating["classProbabilities"]!.AsArray(), c =>
        {
            Assert.Null(c!["probability"]);
            Assert.True((decimal)c["atLeast"]! <= (decimal)c["atMost"]!);
        });
        Assert.Null(rating["likely"]);
    }

    [Fact]
    public async Task The_spread_that_was_used_is_said_with_its_source()
    {
        var rating = await Rated("""{"analyte":"P","value":24,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""");

        var spread = rating["assumptions"]!.AsArray().First(a => (string?)a!["code"] == "composite-spread")!;
        Assert.False(string.IsNullOrEmpty((string?)spread["source"]));
    }

    [Fact]
    public async Task Ratings_of_a_plan_say_it_too()
    {
        var plan = await service.PostAsync("/v1/plans", Requests.Plan());

        var phosphorus = plan.Json["beds"]![0]!["ratings"]!.AsArray().First(r => (string?)r!["analyte"] == "P")!;
        Assert.NotNull(phosphorus["classProbabilities"]);
        Assert.NotNull(phosphorus["howSure"]);
    }

    private async Task<JsonNode> Rated(string reading) => (await service.PostAsync("/v1/ratings", Requests.Ratings(reading))).Json["ratings"]![0]!;
}
