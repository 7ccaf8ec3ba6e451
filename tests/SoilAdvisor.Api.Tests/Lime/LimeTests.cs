namespace SoilAdvisor.Api.Tests.Lime;

public sealed class LimeTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task A_buffer_reading_gives_a_requirement_and_stones_that_meet_it()
    {
        var reply = await service.PostAsync("/v1/lime?working=true", Requests.Lime());

        // North Carolina: acidity = 4 (6.6 - 6.2) = 1.6 meq/100 cm3; lime = 1.6 (6.5 - 5.7) / (6.6 - 5.7) = 1.4222 ton/acre.
        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Equal(1.42222m, (decimal)reply.Json["requirement"]!["value"]!);
        Assert.Equal("ton/acre", (string?)reply.Json["requirement"]!["unit"]);
        var choices = reply.Json["choices"]!.AsArray();
        Assert.NotEmpty(choices);
        Assert.All(choices, c => Assert.NotEmpty(c!["reasons"]!.AsArray()));
        Assert.NotEmpty(reply.Json["working"]!.AsArray());
    }

    [Fact]
    public async Task At_the_target_no_lime_is_needed_and_none_is_chosen()
    {
        var request = Requests.Lime();
        request["targetPh"] = 5.7m;
        var reply = await service.PostAsync("/v1/lime", request);

        Assert.Equal(0m, (decimal)reply.Json["requirement"]!["value"]!);
        Assert.Empty(reply.Json["choices"]!.AsArray());
    }

    [Fact]
    public async Task Half_the_depth_takes_half_the_lime()
    {
        var request = Requests.Lime();
        request["depth"] = Requests.Quantity(3, "in");
        var whole = await service.PostAsync("/v1/lime", Requests.Lime());
        var half = await service.PostAsync("/v1/lime", request);

        var perAcre = (double)whole.Json["requirement"]!["calciumCarbonate"]!["perAcre"]!["value"]!;
        Assert.Equal(perAcre / 2, (double)half.Json["requirement"]!["calciumCarbonate"]!["perAcre"]!["value"]!, 1e-2);
    }

    [Fact]
    public async Task A_buffer_without_its_name_is_asked_for()
    {
        var request = Requests.Lime();
        request["soilTest"] = Requests.SoilTest("""{"analyte":"pH","value":5.7}""", """{"analyte":"bufferPh","value":6.2}""");
        var reply = await service.PostAsync("/v1/lime", request);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal(("/soilTest", "buffer-name-missing"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Fact]
    public async Task Neither_target_nor_crop_is_a_fault()
    {
        var request = Requests.Lime();
        request.Remove("crop");
        var reply = await service.PostAsync("/v1/lime", request);

        Assert.Equal(("/targetPh", "target-missing"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Theory]
    [InlineData("2026-08-01", true)]
    [InlineData("2024-08-01", false)]
    public async Task Lime_spread_lately_is_warned_about(string date, bool warned)
    {
        var request = Requests.Lime();
        request["recentLime"] = new JsonObject { ["date"] = date };
        var reply = await service.PostAsync("/v1/lime", request);

        Assert.Equal(warned, reply.Json["warnings"]!.AsArray().Count > 0);
    }

    [Fact]
    public async Task Lime_spread_after_the_sample_is_taken_off_whole()
    {
        var request = Requests.Lime();
        var whole = PerAcre(await service.PostAsync("/v1/lime", request));
        request["recentLime"] = new JsonObject { ["amount"] = Requests.Quantity(0.5m, "ton/acre"), ["date"] = "2199-01-01" };
        var reply = await service.PostAsync("/v1/lime", request);

        Assert.Equal(whole - 1000, PerAcre(reply), 0.1);
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "recent-lime-taken-off");
    }

    [Fact]
    public async Task A_recent_liming_in_an_unknown_unit_is_refused_at_its_place()
    {
        var request = Requests.Lime();
        request["recentLime"] = new JsonObject { ["amount"] = Requests.Quantity(0.5m, "bags"), ["date"] = "2026-01-01" };

        Assert.Equal(("/recentLime/amount/unit", "unknown-unit"), Single(await service.PostAsync("/v1/lime", request)));
    }

    [Fact]
    public async Task Methods_stand_side_by_side_each_with_its_region_and_what_it_counts()
    {
        var request = Requests.Lime();
        request["methods"] = new JsonArray("all");
        var reply = await service.PostAsync("/v1/lime", request);

        var compared = reply.Json["comparison"]!.AsArray();
        Assert.Contains(compared, m => (string?)m!["method"] == "mehlich-north-carolina" && m["requirement"] is not null);
        Assert.All(compared, m => Assert.NotEmpty(m!["region"]!.AsArray()));
        Assert.Contains("41 to 73 %", (string?)reply.Json["spread"]!["text"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_method_for_another_buffer_gives_no_amount_beside_the_others()
    {
        var request = Requests.Lime();
        request["methods"] = new JsonArray("mehlich-north-carolina", "smp-iowa");
        var reply = await service.PostAsync("/v1/lime", request);

        var other = reply.Json["comparison"]!.AsArray().Single(m => (string?)m!["method"] == "smp-iowa");
        Assert.Null(other!["requirement"]);
        Assert.Equal("buffer-mismatch", (string?)other["refused"]!["code"]);
    }

    [Fact]
    public async Task Doses_have_days_when_the_first_day_is_given_and_a_named_limit()
    {
        var request = Requests.Lime();
        request["date"] = "2026-10-15";
        request["incorporation"] = "surface";
        var reply = await service.PostAsync("/v1/lime", request);

        var stone = reply.Json["choices"]!.AsArray()[0]!;
        Assert.Equal("missouri-surface", (string?)stone["doseLimit"]!["limit"]);
        Assert.Equal("2026-10-15", (string?)stone["doses"]!.AsArray()[0]!["date"]);
        Assert.NotNull(reply.Json["timing"]!["retest"]);
    }

    [Fact]
    public async Task Burnt_and_hydrated_lime_and_gypsum_are_named_with_their_dangers_and_never_chosen()
    {
        var reply = await service.PostAsync("/v1/lime", Requests.Lime());

        var excluded = reply.Json["excluded"]!.AsArray().ToDictionary(e => (string)e!["material"]!, e => e!);
        Assert.Contains("neither way", (string?)excluded["gypsum"]["reason"], StringComparison.Ordinal);
        Assert.Contains("Burns", (string?)excluded["hydrated-lime"]["cautions"]!.AsArray()[0], StringComparison.Ordinal);
        Assert.DoesNotContain(reply.Json["choices"]!.AsArray(), c => excluded.ContainsKey((string)c!["material"]!));
    }

    [Fact]
    public async Task Above_the_target_there_is_sulfur_and_no_lime()
    {
        var request = Requests.Lime();
        request.Remove("crop");
        request["targetPh"] = 5.0m;
        var reply = await service.PostAsync("/v1/lime", request);

        Assert.Empty(reply.Json["choices"]!.AsArray());
        Assert.Null(reply.Json["timing"]);
        Assert.True(reply.Json["sulfur"]!["rules"]!.AsArray().Count >= 4);
        Assert.Equal("elemental-sulfur", (string?)reply.Json["sulfur"]!["organic"]!["rule"]);
    }

    [Fact]
    public async Task A_label_changes_the_stone_and_its_price_ranks_it()
    {
        var request = Requests.Lime();
        request["materials"] = JsonNode.Parse("""
            [{"material":"calcitic-lime","price":{"value":8,"currency":"USD","per":{"value":40,"unit":"lb"}},
              "analysis":{"neutralisingValue":80,"magnesium":0.4,"moisture":3,"sieves":[{"sieve":8,"passing":100},{"sieve":20,"passing":97},{"sieve":60,"passing":62}]}},
             {"material":"burnt-lime"}]
            """);
        var reply = await service.PostAsync("/v1/lime", request);

        var need = PerAcre(reply);
        var stone = Assert.Single(reply.Json["choices"]!.AsArray())!;
        Assert.Equal(need / 0.8, (double)stone["rate"]!["perAcre"]!["value"]!, 0.1);
        // 8 USD for 40 lb is 400 USD a ton of stone, 500 USD a ton of CaCO3 at 80 %.
        Assert.Equal(500m, (decimal)stone["costPerTonOfLime"]!["value"]!);
        Assert.Contains(stone["reasons"]!.AsArray(), r => ((string)r!).Contains("ground finely enough", StringComparison.Ordinal));
        Assert.Contains(reply.Json["excluded"]!.AsArray(), e => (string?)e!["material"] == "burnt-lime");
    }

    [Theory]
    [InlineData("""{"sieves":[{"sieve":8,"passing":2},{"sieve":60,"passing":55}]}""", "/materials/0/analysis/sieves", "sieve-analysis")]
    [InlineData("""{"sieveClasses":[{"retainedOn":8,"percent":2},{"passing":8,"percent":55}]}""", "/materials/0/analysis/sieveClasses", "sieve-analysis")]
    [InlineData("""{"sieves":[{"sieve":8,"passing":98}],"sieveClasses":[{"retainedOn":8,"percent":2},{"passing":8,"percent":98}]}""", "/materials/0/analysis/sieveClasses", "sieve-analysis-twice")]
    [InlineData("""{"effectiveValue":{"index":"ohio-emp","value":1500}}""", "/materials/0/analysis/effectiveValue/index", "unknown-lime-index")]
    [InlineData("""{"sieves":[{"sieve":8.5,"passing":98}]}""", "/materials/0/analysis/sieves/0/sieve", "not-whole")]
    public async Task A_faulty_label_is_refused_at_its_place(string analysis, string pointer, string code)
    {
        var request = Requests.Lime();
        request["materials"] = new JsonArray(new JsonObject { ["material"] = "calcitic-lime", ["analysis"] = JsonNode.Parse(analysis) });
        var reply = await service.PostAsync("/v1/lime?strict=true", request);

        Assert.Contains((pointer, code), reply.Errors.Select(e => (e.Pointer, e.Code)));
    }

    [Theory]
    [InlineData("incorporation", "thrown", "unknown-incorporation")]
    [InlineData("date", "15.10.2026", "date-form")]
    public async Task A_word_that_is_not_known_is_asked_for(string member, string value, string code)
    {
        var request = Requests.Lime();
        request[member] = value;

        Assert.Equal(($"/{member}", code), Single(await service.PostAsync("/v1/lime", request)));
    }

    [Fact]
    public async Task A_plan_and_a_question_about_lime_agree()
    {
        var plan = await service.PostAsync("/v1/plans", Requests.Plan(Requests.Bed("A1")));
        var bed = plan.Json["beds"]!.AsArray()[0]!;
        var lime = bed["lime"]!;
        var request = Requests.Lime();
        request["guide"] = "delaware-vegetables";
        request["region"] = "US-DE";
        request.Remove("crop");
        request["materials"] = Requests.Plan()["materials"]?.DeepClone();
        request["crops"] = new JsonArray([.. Requests.Bed("A1")["crops"]!.AsArray().Select(c => (JsonNode)(string)c!["crop"]!)]);
        var asked = await service.PostAsync("/v1/lime", request);

        Assert.Equal((decimal)lime["requirement"]!["calciumCarbonate"]!["perAcre"]!["value"]!, (decimal)asked.Json["requirement"]!["calciumCarbonate"]!["perAcre"]!["value"]!);
        Assert.Equal(
            lime["choices"]!.AsArray().Select(c => ((string?)c!["material"], (decimal)c["rate"]!["perAcre"]!["value"]!)),
            asked.Json["choices"]!.AsArray().Select(c => ((string?)c!["material"], (decimal)c["rate"]!["perAcre"]!["value"]!)));
    }

    private static double PerAcre(Reply reply) => (double)reply.Json["requirement"]!["calciumCarbonate"]!["perAcre"]!["value"]!;

    private static (string Pointer, string Code) Single(Reply reply) => (reply.Errors.Single().Pointer, reply.Errors.Single().Code);
}
