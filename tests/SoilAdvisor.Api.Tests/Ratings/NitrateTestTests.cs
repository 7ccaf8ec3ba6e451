namespace SoilAdvisor.Api.Tests.Ratings;

/// <summary>A pre-sidedress nitrate test read by the sidedress table for sweet corn.</summary>
public sealed class NitrateTestTests(Service service) : IClassFixture<Service>
{
    // Rutgers sidedress table for sweet corn as a crop bulletin of the University of Delaware quotes it (restated; the article itself was not read).
    // Manured soil: up to 10 ppm 160, 11 to 15 120, 16 to 20 80, 21 to 25 40, above 25 none. Unmanured: up to 15 160, 16 to 20 120, 21 to 25 80,
    // 26 to 30 40, above 30 none; all in lb N/acre.
    [Theory]
    [InlineData(true, 10, 160)]
    [InlineData(true, 11, 120)]
    [InlineData(true, 20, 80)]
    [InlineData(true, 21, 40)]
    [InlineData(true, 25, 40)]
    [InlineData(true, 26, 0)]
    [InlineData(false, 15, 160)]
    [InlineData(false, 16, 120)]
    [InlineData(false, 30, 40)]
    [InlineData(false, 31, 0)]
    public async Task The_rate_is_that_of_the_printed_level(bool manured, int nitrate, int pounds)
    {
        var reply = await Rate(nitrate, "sweet-corn", manured);

        var advice = reply.Json["nitrateTest"]!;
        Assert.Equal(pounds, (decimal)advice["rate"]!["perAcre"]!["value"]!);
        Assert.Equal("lb/acre", (string?)advice["rate"]!["perAcre"]!["unit"]);
        Assert.StartsWith(pounds == 0 ? "Sidedress no nitrogen" : $"Sidedress {pounds} lb/acre of nitrogen", (string?)advice["action"], StringComparison.Ordinal);
        Assert.Equal(("ru-psnt", "seen"), ((string?)advice["source"], (string?)advice["evidence"]));
        Assert.Contains(reply.Json["sources"]!.AsArray(), s => (string?)s!["id"] == "ru-psnt");
        Assert.DoesNotContain(reply.Refused, f => f.Pointer.StartsWith("/soilTest", StringComparison.Ordinal));
    }

    [Fact]
    public async Task It_says_its_level_what_it_replaces_and_shows_its_working()
    {
        var reply = await Rate(20, "sweet-corn", true, "?working=true");

        var advice = reply.Json["nitrateTest"]!;
        Assert.Equal("16 to 20 mg/kg", (string?)advice["level"]);
        Assert.Contains("credits", (string?)advice["replaces"], StringComparison.Ordinal);
        Assert.Contains("sidedressing only", (string?)advice["replaces"], StringComparison.Ordinal);
        Assert.Equal("80 lb N/acre", (string?)Assert.Single(advice["working"]!.AsArray())!["result"]!["text"]);
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "nitrate-test-in-place-of-credits");
    }

    // The table prints whole ppm: 16 to 20, then 21 to 25.
    [Fact]
    public async Task A_decimal_is_rounded_and_said()
    {
        var reply = await Rate(20.5m, "sweet-corn", true);

        Assert.Equal("21 to 25 mg/kg", (string?)reply.Json["nitrateTest"]!["level"]);
        Assert.Contains(reply.Json["nitrateTest"]!["assumptions"]!.AsArray(), a => (string?)a!["code"] == "rounded-to-printed-bins");
    }

    [Theory]
    [InlineData("<", 10, false)]
    [InlineData("<", 20, true)]
    [InlineData(">", 20, true)]
    [InlineData(">", 40, false)]
    public async Task An_open_result_says_so_where_the_rate_may_be_another(string comparator, int nitrate, bool said)
    {
        var request = Request(nitrate, "sweet-corn", true);
        request["soilTest"]!["readings"]![0]!["comparator"] = comparator;
        var reply = await service.PostAsync("/v1/ratings", request);

        Assert.Equal(said, reply.Json["nitrateTest"]!["assumptions"]!.AsArray().Any(a => (string?)a!["code"] == "open-result"));
    }

    [Fact]
    public async Task Without_the_timing_it_is_no_nitrate_test_and_nothing_is_refused_for_it()
    {
        var request = Request(20, "sweet-corn", true);
        request["soilTest"]!.AsObject().Remove("timing");
        request["soilTest"]!["readings"]!.AsArray().Add(JsonNode.Parse(Requests.Phosphorus));
        request["guide"] = "delaware-vegetables";
        var reply = await service.PostAsync("/v1/ratings", request);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Null(reply.Json["nitrateTest"]);
        Assert.Equal("analyte-not-covered", Assert.Single(reply.Refused).Code);
    }

    [Fact]
    public async Task A_routine_guide_does_not_keep_the_advice_away()
    {
        var request = Request(20, "sweet-corn", true);
        request["soilTest"]!["readings"]!.AsArray().Add(JsonNode.Parse(Requests.Phosphorus));
        request["guide"] = "delaware-vegetables";
        var reply = await service.PostAsync("/v1/ratings", request);

        Assert.Equal(80m, (decimal)reply.Json["nitrateTest"]!["rate"]!["perAcre"]!["value"]!);
    }

    [Theory]
    [InlineData(null, true, "crop-missing")]
    [InlineData("sweet-corn", null, "manured-missing")]
    [InlineData("lettuce", true, "no-sidedress-table")]
    public async Task What_it_lacks_is_refused_at_the_nitrate_reading(string? crop, bool? manured, string code)
    {
        var request = Request(20, crop, manured);
        request["soilTest"]!["readings"]!.AsArray().Insert(0, JsonNode.Parse(Requests.Phosphorus));
        request["guide"] = "delaware-vegetables";
        var reply = await service.PostAsync("/v1/ratings", request);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Null(reply.Json["nitrateTest"]);
        Assert.Contains(reply.Refused, f => (f.Pointer, f.Code) == ("/soilTest/readings/1", code));
    }

    [Fact]
    public async Task The_layer_is_asked_for()
    {
        var request = Request(20, "sweet-corn", true);
        request["soilTest"]!["depth"]!["to"] = 6;
        var reply = await service.PostAsync("/v1/ratings", request);

        Assert.Contains(reply.Errors, f => f.Code == "context-not-covered" && f.Message.Contains("sidedress table", StringComparison.Ordinal) && f.Suggestion.Contains("0 to 12 in", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_guide_with_a_level_for_the_crop_is_found_without_phosphorus_or_potassium()
    {
        var reply = await Rate(20, "sweet-corn", true);

        Assert.Equal("northeast-nitrate-test", (string?)reply.Json["guide"]!["id"]);
        Assert.Contains("neither phosphorus nor potassium", (string?)reply.Json["guideReason"], StringComparison.Ordinal);
    }

    private Task<Reply> Rate(decimal nitrate, string? crop, bool? manured, string query = "") => service.PostAsync("/v1/ratings" + query, Request(nitrate, crop, manured));

    private static JsonObject Request(decimal nitrate, string? crop, bool? manured)
    {
        var request = JsonNode.Parse("""
            {"soilTest":{"id":"Corn","timing":"before-sidedressing","depth":{"from":0,"to":12,"unit":"in"},"readings":[{"analyte":"NO3-N","unit":"mg/kg"}]}}
            """)!.AsObject();
        request["soilTest"]!["readings"]![0]!["value"] = nitrate;
        if (crop is not null)
        {
            request["crop"] = crop;
        }

        if (manured is not null)
        {
            request["manured"] = manured;
        }

        return request;
    }
}
