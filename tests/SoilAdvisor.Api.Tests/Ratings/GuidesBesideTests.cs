namespace SoilAdvisor.Api.Tests.Ratings;

/// <summary>What the neighbouring state would say.</summary>
public sealed class GuidesBesideTests(Service service) : IClassFixture<Service>
{
    // Mehlich-3 P of 40 mg/kg. Delaware (restated): Medium 26-50. Pennsylvania (from memory, as its table says): optimum 30 to 50.
    [Fact]
    public async Task Another_guide_rates_the_same_reading_by_its_own_limits()
    {
        var reply = await Rate("""["pennsylvania"]""", Phosphorus(40));

        Assert.Equal("Medium", (string?)reply.Json["ratings"]![0]!["class"]);
        var view = Assert.Single(reply.Json["beside"]!.AsArray())!;
        Assert.Equal("pennsylvania", (string?)view["guide"]!["id"]);
        Assert.Equal("US-PA", (string?)view["guide"]!["regions"]![0]);
        Assert.False(string.IsNullOrEmpty((string?)view["guide"]!["calibratedOn"]));
        var rating = Assert.Single(view["ratings"]!.AsArray())!;
        Assert.Equal("Optimum", (string?)rating["class"]);
        Assert.Equal((30m, 50m), ((decimal)rating["scale"]!["target"]!["lower"]!, (decimal)rating["scale"]!["target"]!["upper"]!));
        Assert.False(string.IsNullOrEmpty((string?)rating["source"]));
    }

    [Fact]
    public async Task Where_guides_part_the_answer_says_who_says_what()
    {
        var reply = await Rate("""["pennsylvania"]""", Phosphorus(40));

        var agreement = Assert.Single(reply.Json["agreement"]!.AsArray())!;
        Assert.False((bool)agreement["unanimous"]!);
        Assert.Equal("P: below its target by delaware-vegetables; at its target by pennsylvania.", (string?)agreement["text"]);
    }

    [Fact]
    public async Task Where_guides_agree_the_answer_counts_them()
    {
        var reply = await Rate("""["pennsylvania"]""", Phosphorus(5));

        Assert.Equal("P: all 2 guides that rate it put it below its target.", (string?)reply.Json["agreement"]![0]!["text"]);
    }

    [Fact]
    public async Task All_takes_every_guide_with_limits_for_the_extractant_and_none_without()
    {
        var reply = await Rate("""["all"]""", Phosphorus(40));

        var ids = reply.Json["beside"]!.AsArray().Select(v => (string)v!["guide"]!["id"]!).ToList();
        Assert.Contains("pennsylvania", ids);
        Assert.Contains("new-jersey-vegetables", ids);
        Assert.DoesNotContain("new-england-vegetables", ids);
        Assert.DoesNotContain("delaware-vegetables", ids);
        Assert.Equal(ids.Distinct(), ids);
    }

    [Fact]
    public async Task What_another_guide_cannot_rate_stands_with_it_and_refuses_nothing_of_the_answer()
    {
        var reply = await Rate("""["new-england-vegetables"]""", Phosphorus(40));

        Assert.Null(reply.Json["refused"]);
        Assert.Equal("method-not-covered", (string?)reply.Json["beside"]![0]!["refused"]![0]!["code"]);
        Assert.Equal("/soilTest/readings/0", (string?)reply.Json["beside"]![0]!["refused"]![0]!["pointer"]);
    }

    [Fact]
    public async Task An_unknown_guide_is_refused_at_its_place_with_the_nearest_name()
    {
        var reply = await Rate("""["pennsylvania","pensylvania"]""", Phosphorus(40));

        var fault = Assert.Single(reply.Refused);
        Assert.Equal(("/beside/1", "unknown-guide"), (fault.Pointer, fault.Code));
        Assert.Contains("pennsylvania", fault.Suggestion, StringComparison.Ordinal);
        Assert.Single(reply.Json["beside"]!.AsArray());
    }

    [Theory]
    [InlineData(20, HttpStatusCode.OK)]
    [InlineData(21, HttpStatusCode.UnprocessableEntity)]
    public async Task Twenty_guides_may_be_named(int named, HttpStatusCode status)
    {
        var request = Requests.Ratings(Phosphorus(40));
        request["beside"] = new JsonArray([.. Enumerable.Repeat("pennsylvania", named).Select(n => (JsonNode)n)]);

        var reply = await service.PostAsync("/v1/ratings?strict=true", request);

        Assert.Equal(status, reply.Status);
        Assert.Equal(named > 20, reply.Text.Contains("too-many", StringComparison.Ordinal));
    }

    private static string Phosphorus(int value) =>
        string.Create(CultureInfo.InvariantCulture, $$"""{"analyte":"P","value":{{value}},"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""");

    private Task<Reply> Rate(string beside, params string[] readings)
    {
        var request = Requests.Ratings(readings);
        request["beside"] = JsonNode.Parse(beside);
        return service.PostAsync("/v1/ratings", request);
    }
}
