namespace SoilAdvisor.Api.Tests.Sampling;

public sealed class SamplingTests(Service service) : IClassFixture<Service>
{
    // Worked by hand: (1.645 × 40 / 20)² = 10.8, 11 cores where the variation is known; by the printed t table 13 (4 × 1.782² = 12.70; 12 cores would need 4 × 1.796² = 12.90).
    [Fact]
    public async Task Cores_for_a_precision_are_counted_and_shown_step_by_step()
    {
        var reply = await service.PostAsync("/v1/sampling?working=true", """{"cv": 40, "precision": 20, "confidence": 90}""");

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Equal((13, 11), ((int)reply.Json["cores"]!["cores"]!, (int)reply.Json["cores"]!["ifVariationIsKnown"]!));
        Assert.Equal(["standard-score", "cores-for-precision", "cores-for-precision-student"], reply.Json["working"]!.AsArray().Select(l => (string?)l!["formula"]));
        Assert.StartsWith("Mix 13 cores", (string?)reply.Json["cores"]!["words"], StringComparison.Ordinal);
        Assert.Null(reply.Json["precision"]);
        Assert.Null(reply.Json["changes"]);
    }

    // The University of Kentucky table: 25 fields, median 30 % for potassium. 1.96 × 30 / √16 = 14.7 %.
    [Fact]
    public async Task An_analyte_brings_its_published_variation_with_its_source()
    {
        var reply = await service.PostAsync("/v1/sampling", """{"analyte": "K", "cores": 16, "confidence": 95}""");

        Assert.Equal(14.7m, Math.Round((decimal)reply.Json["precision"]!["precision"]!["value"]!, 1));
        Assert.Contains(reply.Json["sources"]!.AsArray(), s => (string?)s!["id"] == "kentucky-sb271");
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "field-spread");
    }

    [Fact]
    public async Task An_analyte_without_a_published_variation_asks_for_it()
    {
        var reply = await service.PostAsync("/v1/sampling", """{"analyte": "Zn", "precision": 20}""");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal(("/cv", "field-spread-not-known"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    // Worked by hand: √(14.0² + 16.5²) = 21.6, times 1.96 is 42.4.
    [Fact]
    public async Task Potassium_from_140_to_165_is_no_proved_change()
    {
        var reply = await service.PostAsync("/v1/sampling", Tests("2025-10-10", 140, "2026-10-12", 165));

        var change = Assert.Single(reply.Json["changes"]!.AsArray())!;
        Assert.Equal((25m, 21.6m, 42.4m), ((decimal)change["difference"]!["value"]!, Math.Round((decimal)change["standardDeviation"]!["value"]!, 1), Math.Round((decimal)change["smallestProvable"]!["value"]!, 1)));
        Assert.False((bool)change["proved"]!);
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "confidence-taken");
        var refused = Assert.Single(reply.Json["pooled"]!.AsArray())!["refused"]!;
        Assert.Equal("tests-not-alike", (string?)refused["code"]);
        Assert.Contains("the season (10 October 2025; 12 October 2026)", (string?)refused["message"], StringComparison.Ordinal);
    }

    // The geometric mean of 90 and 160 is 120.
    [Fact]
    public async Task Two_tests_of_one_season_pool()
    {
        var reply = await service.PostAsync("/v1/sampling", Tests("2026-10-10", 90, "2026-10-12", 160));

        var pooled = Assert.Single(reply.Json["pooled"]!.AsArray())!;
        Assert.Equal(120m, (decimal)pooled["value"]!["value"]!);
        Assert.Equal("%", (string?)pooled["spread"]!["unit"]);
    }

    [Fact]
    public async Task A_change_that_cannot_be_judged_stands_under_refused_and_the_rest_is_answered()
    {
        var request = Tests("2025-10-10", 140, "2026-10-12", 165);
        request["tests"]![0]!["readings"]!.AsArray().Add(JsonNode.Parse("""{"analyte":"S","value":9,"unit":"mg/kg","extractant":"mehlich-3"}"""));
        request["tests"]![1]!["readings"]!.AsArray().Add(JsonNode.Parse("""{"analyte":"S","value":19,"unit":"mg/kg","extractant":"mehlich-3"}"""));

        var reply = await service.PostAsync("/v1/sampling", request);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Equal(("/tests/0/readings/1", "spread-not-known"), (Assert.Single(reply.Refused).Pointer, reply.Refused[0].Code));
        Assert.Equal("K", (string?)Assert.Single(reply.Json["changes"]!.AsArray())!["analyte"]);
    }

    [Fact]
    public async Task Beds_are_grouped_and_each_pair_that_may_not_share_says_why()
    {
        var reply = await service.PostAsync("/v1/sampling", """
            {"beds": [{"id": "1", "soil": "loam", "cropHistory": ["kale"], "amendments": [], "site": "field"},
                      {"id": "2", "soil": "Loam", "cropHistory": ["kale"], "amendments": [], "site": "field"},
                      {"id": "3", "soil": "clay", "cropHistory": ["kale"], "amendments": [], "site": "field"}]}
            """);

        Assert.Equal("""[["1","2"],["3"]]""", reply.Json["composites"]!["together"]!.ToJsonString());
        Assert.Equal(2, reply.Json["composites"]!["apart"]!.AsArray().Count);
        Assert.Contains("The soil differs: loam (1); clay (3).", reply.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_faults_are_said_at_once()
    {
        var reply = await service.PostAsync("/v1/sampling", """
            {"cv": -4, "precision": 0.5, "confidence": 100, "cores": 2.5, "tests": [{"id": "a", "readings": []}],
             "beds": [{"site": "roof"}, {"id": "x", "cropHistory": [" "]}]}
            """);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Superset(
            new HashSet<(string, string)>
            {
                ("/cv", "not-above-zero"), ("/precision", "precision-too-fine"), ("/confidence", "confidence-out-of-range"), ("/cores", "not-a-whole-number"),
                ("/tests", "two-tests-needed"), ("/tests/0/readings", "readings-missing"), ("/beds/0/id", "id-missing"), ("/beds/0/site", "unknown-site"), ("/beds/1/cropHistory/0", "entry-not-a-name"),
            },
            reply.Errors.Select(e => (e.Pointer, e.Code)).ToHashSet());
    }

    [Theory]
    [InlineData("{}", "nothing-asked")]
    [InlineData("""{"analyte": "P"}""", "nothing-asked")]
    [InlineData("""{"precision": 20}""", "field-variation-missing")]
    [InlineData("""{"analyte": "Phosphor", "precision": 20}""", "unknown-analyte")]
    [InlineData("""{"beds": [{"id": "x"}, {"id": "x"}]}""", "duplicate-bed")]
    public async Task What_cannot_be_answered_says_what_is_missing(string request, string code)
    {
        var reply = await service.PostAsync("/v1/sampling", request);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Contains(code, reply.Errors.Select(e => e.Code));
    }

    [Theory]
    [InlineData(60, HttpStatusCode.OK)]
    [InlineData(61, HttpStatusCode.UnprocessableEntity)]
    public async Task So_many_beds_are_compared_at_once_and_no_more(int count, HttpStatusCode expected)
    {
        var beds = new JsonArray([.. Enumerable.Range(0, count).Select(i => new JsonObject { ["id"] = i.ToString(CultureInfo.InvariantCulture) })]);

        Assert.Equal(expected, (await service.PostAsync("/v1/sampling", new JsonObject { ["beds"] = beds })).Status);
    }

    private static JsonObject Tests(string sampled, int first, string later, int second) => new()
    {
        ["tests"] = new JsonArray(Test(sampled, first), Test(later, second)),
    };

    private static JsonObject Test(string sampled, int value)
    {
        var test = JsonNode.Parse("""{"id":"North","lab":"Invented laboratory","depth":{"from":0,"to":6,"unit":"in"},"readings":[{"analyte":"K","unit":"mg/kg","extractant":"mehlich-3"}]}""")!.AsObject();
        test["sampled"] = sampled;
        test["readings"]![0]!["value"] = value;
        return test;
    }
}
