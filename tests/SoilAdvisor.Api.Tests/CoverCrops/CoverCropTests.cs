namespace SoilAdvisor.Api.Tests.CoverCrops;

public sealed class CoverCropTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task Each_species_is_chosen_with_reasons_or_excluded_with_reasons()
    {
        var reply = await service.PostAsync("/v1/cover-crops", Requests.CoverCrops());
        var all = (await service.GetAsync("/v1/cover-crops")).Json["items"]!.AsArray().Select(c => (string)c!["id"]!);

        var (choices, excluded) = (reply.Json["choices"]!.AsArray(), reply.Json["excluded"]!.AsArray());
        Assert.All(choices.Concat(excluded), c => Assert.NotEmpty(c!["reasons"]!.AsArray()));
        Assert.Equal(all.Order(StringComparer.Ordinal), choices.Concat(excluded).Select(c => (string)c!["coverCrop"]!).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task The_score_is_the_sum_of_the_points_shown()
    {
        var reply = await service.PostAsync("/v1/cover-crops", Requests.CoverCrops());

        Assert.All(reply.Json["choices"]!.AsArray(), c => Assert.Equal(c!["reasons"]!.AsArray().Sum(r => (decimal)r!["points"]!), (decimal)c["score"]!));
    }

    [Theory]
    [InlineData("""{"aims":["beauty"]}""", "/aims/0", "unknown-aim")]
    [InlineData("""{"window":null}""", "/window", "window-missing")]
    [InlineData("""{"window":{"from":"2027-07-05"}}""", "/window/to", "date-form")]
    [InlineData("""{"nextCrop":"letuce"}""", "/nextCrop", "unknown-crop")]
    [InlineData("""{"frost":{"firstFall":"October"}}""", "/frost/firstFall", "date-form")]
    public async Task A_request_that_cannot_be_read_is_refused_at_its_place(string changes, string pointer, string code)
    {
        var request = Requests.CoverCrops();
        foreach (var (member, value) in JsonNode.Parse(changes)!.AsObject())
        {
            request[member] = value?.DeepClone();
        }

        var reply = await service.PostAsync("/v1/cover-crops", request);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal((pointer, code), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    // PNW 636 (Sullivan and Andrews 2012), highlights: 35 lb of available nitrogen a ton of dry matter at 3.5 % N, none at 1.5 % N.
    [Theory]
    [InlineData(3.5, 70)]
    [InlineData(1.5, 0)]
    public async Task Two_tons_of_dry_matter_give_what_the_bulletin_prints(double percent, double pounds)
    {
        var request = Requests.Nitrogen();
        request["nitrogenPercent"] = percent;
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", request);

        Assert.Equal(pounds, (double)reply.Json["plantAvailableNitrogen"]!["low"]!);
        Assert.Equal(4000 * percent / 100, (double)reply.Json["totalNitrogen"]!["low"]!, 1e-6);
        Assert.Equal("cc02", (string?)reply.Json["source"]);
    }

    [Fact]
    public async Task Samples_of_a_frame_are_averaged_and_that_is_said()
    {
        var request = Requests.Nitrogen();
        request.Remove("dryMatter");
        request["samples"] = JsonNode.Parse("""[{"dried":{"value":100,"unit":"g"},"frame":{"value":4,"unit":"sq ft"}},{"dried":{"value":200,"unit":"g"},"frame":{"value":4,"unit":"sq ft"}}]""");
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", request);

        // Mean 150 g on 4 sq ft: 150 / 453.59237 x 43560 / 4 = 3601.25 lb/acre.
        Assert.Equal(3601.25, (double)reply.Json["dryMatter"]!["value"]!, 0.01);
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "samples-averaged");
    }

    [Fact]
    public async Task A_mixture_needs_its_nitrogen_measured()
    {
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", """{"mixture":["hairy-vetch","cereal-rye"],"dryMatter":{"value":4000,"unit":"lb/acre"}}""");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Contains(reply.Errors, e => e is { Pointer: "/nitrogenPercent", Code: "nitrogen-percent-missing" });
    }

    [Fact]
    public async Task Without_a_measurement_the_published_range_is_taken_and_said()
    {
        var request = Requests.Nitrogen();
        request.Remove("nitrogenPercent");
        request["coverCrop"] = "common-vetch";
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", request);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        // 3 to 4 % N: 17.5 x (3 - 1.5) = 26.25 lb a ton; 17.5 x (4 - 1.5) = 43.75, held at 40; two tons.
        Assert.Equal(52.5m, (decimal)reply.Json["plantAvailableNitrogen"]!["low"]!);
        Assert.Equal(80m, (decimal)reply.Json["plantAvailableNitrogen"]!["high"]!);
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "nitrogen-percent-published");
    }

    [Fact]
    public async Task Where_the_soil_is_short_of_phosphorus_it_counts_as_an_aim()
    {
        var request = Requests.CoverCrops();
        var plain = await service.PostAsync("/v1/cover-crops", request);
        request["guide"] = "delaware-vegetables";
        request["soilTest"] = Requests.SoilTest();
        var shortOf = await service.PostAsync("/v1/cover-crops", request);

        Assert.DoesNotContain("phosphorus available", plain.Text, StringComparison.Ordinal);
        Assert.Contains("making soil phosphorus available", shortOf.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Neither_stand_nor_dry_matter_is_a_fault()
    {
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", "{}");

        Assert.Equal([("/coverCrop", "stand-missing"), ("/dryMatter", "dry-matter-missing")], reply.Errors.Select(e => (e.Pointer, e.Code)).Order());
    }
}
