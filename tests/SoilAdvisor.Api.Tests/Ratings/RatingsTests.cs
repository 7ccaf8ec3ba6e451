namespace SoilAdvisor.Api.Tests.Ratings;

public sealed class RatingsTests(Service service) : IClassFixture<Service>
{
    // University of Delaware soil test categories, Mehlich-3 P: Low 0-25, Medium 26-50, Optimum 51-100, Excessive over 100 (restated; the page itself was not read).
    [Theory]
    [InlineData(0, "Low")]
    [InlineData(25, "Low")]
    [InlineData(26, "Medium")]
    [InlineData(50, "Medium")]
    [InlineData(51, "Optimum")]
    [InlineData(100, "Optimum")]
    [InlineData(101, "Excessive")]
    public async Task Phosphorus_is_rated_in_the_class_that_the_guide_prints(int value, string printed)
    {
        var reply = await service.PostAsync("/v1/ratings", Requests.Ratings(
            string.Create(CultureInfo.InvariantCulture, $$"""{"analyte":"P","value":{{value}},"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""")));

        var rating = Assert.Single(reply.Json["ratings"]!.AsArray())!;
        Assert.Equal(printed, (string?)rating["class"]);
        Assert.Equal("ud-ph", (string?)rating["source"]);
    }

    [Fact]
    public async Task Parts_per_million_and_half_the_pounds_per_acre_are_rated_alike()
    {
        var ppm = await service.PostAsync("/v1/ratings", Requests.Ratings("""{"analyte":"P","value":14,"unit":"ppm","extractant":"mehlich-3","detection":"icp"}"""));
        var pounds = await service.PostAsync("/v1/ratings", Requests.Ratings("""{"analyte":"P","value":28,"unit":"lb/acre","extractant":"mehlich-3","detection":"icp"}"""));

        Assert.Equal(14m, (decimal)ppm.Json["ratings"]![0]!["scale"]!["position"]!);
        Assert.Equal(14m, (decimal)pounds.Json["ratings"]![0]!["scale"]!["position"]!);
        Assert.Contains(pounds.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "pounds-per-acre-factor");
    }

    [Fact]
    public async Task Phosphate_declared_as_such_is_counted_as_phosphorus()
    {
        // 100 mg/kg P2O5 x 61.947524 / 141.942524 = 43.64 mg/kg P: Medium, where 100 mg/kg P would be Optimum.
        var reply = await service.PostAsync("/v1/ratings", Requests.Ratings("""{"analyte":"P","value":100,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp","basis":"oxide"}"""));

        Assert.Equal("Medium", (string?)reply.Json["ratings"]![0]!["class"]);
    }

    [Fact]
    public async Task A_guide_that_does_not_cover_the_method_names_those_that_do()
    {
        var reply = await service.PostAsync("/v1/ratings", Requests.Ratings(
            Requests.Phosphorus,
            """{"analyte":"K","value":100,"unit":"mg/kg","extractant":"modified-morgan"}"""));

        var fault = Assert.Single(reply.Refused);
        Assert.Equal(("/soilTest/readings/1", "method-not-covered"), (fault.Pointer, fault.Code));
        Assert.Contains("modified-morgan", fault.Message, StringComparison.Ordinal);
        Assert.Contains("new-england-vegetables", fault.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public async Task When_the_guide_covers_nothing_the_answer_names_the_guides_that_do()
    {
        var reply = await service.PostAsync("/v1/ratings", Requests.Ratings("""{"analyte":"P","value":10,"unit":"mg/kg","extractant":"modified-morgan","detection":"colorimetric"}"""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal(("/guide", "guide-does-not-cover"), (fault.Pointer, fault.Code));
        Assert.Contains("new-england-vegetables", fault.Suggestion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("guide", "delaware-vegetable", "/guide", "unknown-guide", "delaware-vegetables")]
    [InlineData("crop", "brocoli", "/crop", "unknown-crop", "broccoli")]
    public async Task An_unknown_name_is_answered_with_the_nearest(string member, string value, string pointer, string code, string nearest)
    {
        var request = Requests.Ratings();
        request[member] = value;
        var reply = await service.PostAsync("/v1/ratings", request);

        var fault = Assert.Single(reply.Errors.Concat(reply.Refused));
        Assert.Equal((pointer, code), (fault.Pointer, fault.Code));
        Assert.Contains(nearest, fault.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_soil_test_is_a_fault_and_not_an_empty_answer()
    {
        var reply = await service.PostAsync("/v1/ratings", "{}");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal(("/soilTest", "soil-test-missing"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Fact]
    public async Task Strictly_asked_one_refusal_refuses_everything()
    {
        var request = Requests.Ratings(Requests.Phosphorus, """{"analyte":"K","value":100,"unit":"mg/kg"}""");

        Assert.Equal(HttpStatusCode.OK, (await service.PostAsync("/v1/ratings?strict=false", request)).Status);
        var strict = await service.PostAsync("/v1/ratings?strict=true", request);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, strict.Status);
        Assert.Equal("extractant-missing", Assert.Single(strict.Errors).Code);
    }

    [Fact]
    public async Task The_working_is_shown_only_when_asked_for_and_changes_no_number()
    {
        var silent = await service.PostAsync("/v1/ratings", Requests.Ratings());
        var shown = await service.PostAsync("/v1/ratings?working=true", Requests.Ratings());

        Assert.Null(silent.Json["ratings"]![0]!["working"]);
        var line = shown.Json["ratings"]![0]!["working"]![0]!;
        Assert.Equal("given", (string?)line["inputs"]![0]!["from"]);
        Assert.Equal("/soilTest/readings/0", (string?)line["inputs"]![0]!["where"]);
        var without = shown.Json;
        without["ratings"]![0]!.AsObject().Remove("working");
        Assert.True(JsonNode.DeepEquals(silent.Json, without));
    }
}
