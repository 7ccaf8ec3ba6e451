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
    public async Task Samples_are_added_up_over_their_whole_area()
    {
        var request = Requests.Nitrogen();
        request.Remove("dryMatter");
        request["samples"] = JsonNode.Parse("""[{"dried":{"value":100,"unit":"g"},"frame":{"value":2,"unit":"sq ft"}},{"fresh":{"value":1000,"unit":"g"},"dryMatterPercent":20,"frame":{"value":6,"unit":"sq ft"}}]""");
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", request);

        // 100 g and 20 % of 1000 g are 300 g on 8 sq ft: 300 / 453.59237 x 43560 / 8 = 3601.25 lb/acre. The mean of the two frames would be 4001.
        Assert.Equal(3601.25, (double)reply.Json["dryMatter"]!["value"]!, 0.01);
        Assert.Equal("measured", (string)reply.Json["confidence"]!);
    }

    [Fact]
    public async Task An_estimate_from_height_is_marked_low_in_confidence()
    {
        var request = Requests.Nitrogen();
        request.Remove("dryMatter");
        request["height"] = JsonNode.Parse("""{"value":18,"unit":"in"}""");
        request["coverPercent"] = 60;
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", request);

        // (2000 + 12 x 150) x 0.6 = 2280 lb/acre by the rule of thumb of a North Dakota extension column.
        Assert.Equal(2280m, (decimal)reply.Json["dryMatter"]!["value"]!);
        Assert.Equal("low", (string)reply.Json["confidence"]!);
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "dry-matter-from-height");
    }

    // 75 % of mature rye at 0.7 % and 25 % of vetch at 3.5 %: 1.4 %; 2 tons x 17.5 x (1.4 - 1.5) = -3.5 lb/acre. Half of its total nitrogen would be +28.
    [Fact]
    public async Task A_mixture_is_blended_before_the_line_is_read()
    {
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", """{"parts":[{"coverCrop":"cereal-rye","sharePercent":75,"nitrogenPercent":0.7},{"coverCrop":"hairy-vetch","sharePercent":25,"nitrogenPercent":3.5}],"dryMatter":{"value":4000,"unit":"lb/acre"}}""");

        Assert.Equal(1.4m, (decimal)reply.Json["nitrogenPercent"]!["low"]!);
        Assert.Equal(-3.5m, (decimal)reply.Json["plantAvailableNitrogen"]!["low"]!);
    }

    [Fact]
    public async Task Where_nothing_was_measured_the_stage_gives_what_is_usual_for_such_plants()
    {
        var request = Requests.Nitrogen();
        request.Remove("nitrogenPercent");
        request["coverCrop"] = "oats";
        request["stage"] = "flowering";
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", request);

        // Grasses at flowering: 1.5 to 2.5 % N (UC Santa Cruz unit 1.6); 2 tons x 17.5 x (0 to 1) = 0 to 35 lb/acre.
        Assert.Equal((0m, 35m), ((decimal)reply.Json["plantAvailableNitrogen"]!["low"]!, (decimal)reply.Json["plantAvailableNitrogen"]!["high"]!));
        Assert.Equal("published-nitrogen", (string)reply.Json["confidence"]!);
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "nitrogen-percent-by-stage");
    }

    [Theory]
    [InlineData("""{"parts":[{"coverCrop":"oats","sharePercent":75,"nitrogenPercent":1},{"coverCrop":"hairy-vetch","sharePercent":24.4,"nitrogenPercent":3}],"dryMatter":{"value":4000,"unit":"lb/acre"}}""", "/parts", "parts-sum")]
    [InlineData("""{"coverCrop":"hairy-vetch","nitrogenPercent":3,"height":{"value":5,"unit":"in"}}""", "/height", "height-out-of-rule")]
    [InlineData("""{"mixture":["oats","hairy-vetch"],"nitrogenPercent":3,"height":{"value":12,"unit":"in"}}""", "/height", "height-of-mixture")]
    [InlineData("""{"coverCrop":"hairy-vetch","nitrogenPercent":3,"samples":[{"fresh":{"value":1,"unit":"lb"},"frame":{"value":4,"unit":"sq ft"}}]}""", "/samples/0/dryMatterPercent", "dry-matter-percent-missing")]
    [InlineData("""{"coverCrop":"hairy-vetch","nitrogenPercent":3,"samples":[{"frame":{"value":4,"unit":"sq ft"}}]}""", "/samples/0/dried", "sample-incomplete")]
    public async Task A_stand_that_cannot_be_reckoned_is_refused_at_its_place(string json, string pointer, string code)
    {
        var reply = await service.PostAsync("/v1/cover-crops/nitrogen", json);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal((pointer, code), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Fact]
    public async Task Cut_samples_of_a_former_stand_become_the_credit_of_the_next_crop()
    {
        var bed = Requests.Bed("A1").AsObject();
        bed["previous"] = JsonNode.Parse("""[{"coverCrop":"hairy-vetch","nitrogenPercent":3.5,"killed":"2027-03-20","samples":[{"dried":{"value":0.9,"unit":"lb"},"frame":{"value":4,"unit":"sq ft"}},{"dried":{"value":0.3,"unit":"lb"},"frame":{"value":4,"unit":"sq ft"}}]}]""");
        var reply = await service.PostAsync("/v1/plans", Requests.Plan(bed));

        // 6,534 lb/acre (North Carolina worksheet) at 3.5 % N: 3.267 tons x 35 lb (PNW 636) = 114.345 lb/acre.
        var credit = reply.Json["beds"]![0]!["credits"]!.AsArray().Single(c => (string)c!["nutrient"]! == "N")!;
        Assert.Equal(114.345m, (decimal)credit["amount"]!["low"]!, 3);
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
