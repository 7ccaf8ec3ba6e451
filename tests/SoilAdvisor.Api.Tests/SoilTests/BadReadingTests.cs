namespace SoilAdvisor.Api.Tests.SoilTests;

public sealed class BadReadingTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string, string, string, string, string> Bad => new()
    {
        { """{"value":14,"unit":"mg/kg","extractant":"mehlich-3"}""", "/analyte", "analyte-missing", "The analyte is missing", "for example P" },
        { """{"analyte":"Pp","value":14,"unit":"mg/kg","extractant":"mehlich-3"}""", "/analyte", "unknown-analyte", "\"Pp\"", "Did you mean" },
        { """{"analyte":"P2O5","value":14,"unit":"mg/kg","extractant":"mehlich-3"}""", "/analyte", "oxide-analyte", "P2O5 is an oxide", "basis oxide" },
        { """{"analyte":"K2O","value":14,"unit":"mg/kg","extractant":"mehlich-3"}""", "/analyte", "oxide-analyte", "a soil test counts K", "basis oxide" },
        { """{"analyte":"P","unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "value-missing", "has no value", "Give the number" },
        { """{"analyte":"P","value":"1,5","unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "decimal-comma", "\"1,5\", with a comma", "decimal point (1.5)" },
        { """{"analyte":"P","value":"NaN","unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "not-a-number", "\"NaN\", which is not a number", "plain digits" },
        { """{"analyte":"P","value":"low","unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "not-a-number", "\"low\"", "plain digits" },
        { """{"analyte":"P","value":"14 ppm","unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "not-a-number", "\"14 ppm\"", "without unit" },
        { """{"analyte":"P","value":true,"unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "not-a-number", "\"true\"", "plain digits" },
        { """{"analyte":"P","value":"< 5","unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "comparator-in-value", "\"< 5\"", "\"comparator\": \"<\"" },
        { """{"analyte":"P","value":1e300,"unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "number-too-large", "1e300", "Check the number" },
        { """{"analyte":"P","value":-1,"unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "negative-value", "P is -1 mg/kg", "Check the sign" },
        { """{"analyte":"P","value":10001,"unit":"mg/kg","extractant":"mehlich-3"}""", "/value", "impossible-value", "more than 10000 mg/kg", "unit" },
        { """{"analyte":"organicMatter","value":100.1,"unit":"%"}""", "/value", "impossible-value", "100.1 %", "Check the number" },
        { """{"analyte":"pH","value":14.1}""", "/value", "ph-range", "pH runs from 0 to 14", "slipped decimal point" },
        { """{"analyte":"pH","value":-0.1}""", "/value", "ph-range", "pH is -0.1", "slipped decimal point" },
        { """{"analyte":"bufferPh","value":62,"method":"mehlich"}""", "/value", "ph-range", "bufferPh is 62", "slipped decimal point" },
        { """{"analyte":"P","value":14,"comparator":"about","unit":"mg/kg","extractant":"mehlich-3"}""", "/comparator", "unknown-comparator", "\"about\"", "<, <=, > or >=" },
        { """{"analyte":"P","value":14,"extractant":"mehlich-3"}""", "/unit", "unit-missing", "P has no unit", "ask the laboratory" },
        { """{"analyte":"P","value":14,"unit":"mg/kgg","extractant":"mehlich-3"}""", "/unit", "unknown-unit", "\"mg/kgg\"", "Did you mean mg/kg" },
        { """{"analyte":"P","value":14,"unit":"%","extractant":"mehlich-3"}""", "/unit", "unit-not-for-analyte", "P is not reported in %", "Use mg/kg" },
        { """{"analyte":"P","value":14,"unit":"mg/kg"}""", "/extractant", "extractant-missing", "P has no extractant", "ask the laboratory" },
        { """{"analyte":"P","value":14,"unit":"mg/kg","extractant":"melich-3"}""", "/extractant", "unknown-extractant", "\"melich-3\"", "Did you mean mehlich-3" },
        { """{"analyte":"pH","value":6,"extractant":"mehlich-3"}""", "/extractant", "extractant-not-for-analyte", "pH takes no extractant", "under method" },
        { """{"analyte":"P","value":14,"unit":"mg/kg","extractant":"mehlich-3","detection":"eye"}""", "/detection", "unknown-detection", "\"eye\"", "icp" },
        { """{"analyte":"P","value":14,"unit":"mg/kg","extractant":"mehlich-3","basis":"oxid"}""", "/basis", "unknown-basis", "\"oxid\"", "Did you mean oxide" },
        { """{"analyte":"P","value":14,"unit":"mg/kg","extractant":"mehlich-3","method":"smp"}""", "/method", "method-not-for-analyte", "P takes an extractant", "State the extractant" },
        { """{"analyte":"pH","value":6,"method":"water"}""", "/method", "unknown-ph-method", "\"water\"", "water-1:1" },
        { """{"analyte":"bufferPh","value":6,"method":"melich"}""", "/method", "unknown-buffer", "\"melich\"", "Did you mean mehlich" },
    };

    [Fact]
    public async Task All_faults_of_one_line_are_said_at_once()
    {
        var reply = await service.PostAsync("/v1/lab-files", new JsonObject
        {
            ["soilTests"] = new JsonArray(Requests.SoilTest("""{"analyte":"P","value":"14,5","comparator":"about","unit":"mg/kgg","detection":"eye"}""")),
        });

        Assert.Equal(
            ["comparator", "detection", "extractant", "unit", "value"],
            reply.Errors.Select(f => f.Pointer["/soilTests/0/readings/0/".Length..]).Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Bad))]
    public async Task A_faulty_reading_is_refused_at_its_place_and_the_others_stand(string reading, string pointer, string code, string message, string suggestion)
    {
        var reply = await service.PostAsync("/v1/lab-files", new JsonObject
        {
            ["soilTests"] = new JsonArray(Requests.SoilTest(
            """{"analyte":"Zn","value":2,"unit":"mg/kg","extractant":"mehlich-3"}""", reading))
        });

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal(("/soilTests/0/readings/1" + pointer, code), (fault.Pointer, fault.Code));
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
        Assert.Contains(suggestion, fault.Suggestion, StringComparison.Ordinal);
        Assert.Equal("Zn", (string?)Assert.Single(reply.Json["soilTests"]![0]!["readings"]!.AsArray())!["analyte"]);
    }

    [Theory]
    [InlineData("""{"analyte":"pH","value":0}""")]
    [InlineData("""{"analyte":"pH","value":14}""")]
    [InlineData("""{"analyte":"organicMatter","value":100,"unit":"%"}""")]
    [InlineData("""{"analyte":"P","value":10000,"unit":"mg/kg","extractant":"mehlich-3"}""")]
    [InlineData("""{"analyte":"P","value":0,"unit":"ppm","extractant":"Mehlich 3"}""")]
    [InlineData("""{"analyte":"NO3-N","value":12,"unit":"mg/kg"}""")]
    [InlineData("""{"analyte":"P","value":"14","unit":"mg/kg","extractant":"mehlich-3","basis":"oxide"}""")]
    public async Task A_value_on_the_edge_of_the_possible_is_taken(string reading)
    {
        var reply = await service.PostAsync("/v1/lab-files", new JsonObject { ["soilTests"] = new JsonArray(Requests.SoilTest(reading)) });

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Empty(reply.Errors);
    }

    [Fact]
    public async Task Digits_and_the_sign_of_an_open_result_are_kept()
    {
        var reply = await service.PostAsync("/v1/lab-files", new JsonObject
        {
            ["soilTests"] = new JsonArray(Requests.SoilTest(
            """{"analyte":"P","value":7.00,"unit":"ppm","extractant":"Mehlich 3","detection":"ICP"}""",
            """{"analyte":"K","value":5,"comparator":"<","unit":"ppm","extractant":"m3"}"""))
        });

        Assert.Contains("\"value\":7.00,\"unit\":\"mg/kg\",\"extractant\":\"mehlich-3\",\"detection\":\"icp\"", reply.Text, StringComparison.Ordinal);
        Assert.Contains("\"value\":5,\"comparator\":\"<\"", reply.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_analyte_stands_once_in_a_soil_test()
    {
        var reply = await service.PostAsync("/v1/ratings", Requests.Ratings(Requests.Phosphorus, Requests.Phosphorus));

        var fault = Assert.Single(reply.Refused);
        Assert.Equal(("/soilTest/readings/1", "duplicate-analyte"), (fault.Pointer, fault.Code));
        Assert.Single(reply.Json["ratings"]!.AsArray());
    }

    [Fact]
    public async Task Every_fault_of_a_soil_test_is_said_at_once()
    {
        var test = Requests.SoilTest("""{"analyte":"P","value":14}""", """{"analyte":"K","value":"1,5","unit":"mg/kg","extractant":"mehlich-3"}""");
        test["id"] = "";
        test["sampled"] = "31.3.2026";
        test["texture"] = "lom";
        test["depth"] = JsonNode.Parse("""{"from":6,"to":0,"unit":"inch"}""");
        var reply = await service.PostAsync("/v1/ratings", new JsonObject { ["soilTest"] = test });

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal(
            ["/soilTest/depth/to", "/soilTest/depth/to", "/soilTest/depth/unit", "/soilTest/id", "/soilTest/readings/0/extractant", "/soilTest/readings/0/unit", "/soilTest/readings/1/value", "/soilTest/sampled", "/soilTest/texture"],
            reply.Errors.Select(e => e.Pointer).Order(StringComparer.Ordinal));
        Assert.All(reply.Errors, e => Assert.False(string.IsNullOrWhiteSpace(e.Suggestion)));
    }
}
