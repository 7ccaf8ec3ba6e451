namespace SoilAdvisor.Api.Tests.Ratings;

/// <summary>Readings carried to another method: only by name, only as an estimate.</summary>
public sealed class ConvertedRatingTests(Service service) : IClassFixture<Service>
{
    private const string Line = "bray-p1-to-mehlich-3-phosphorus-ohio";

    // Published as 35 percent higher: 20 x 1.35 = 27.
    [Fact]
    public async Task A_named_line_gives_an_estimate_beside_the_measured_reading()
    {
        var reply = await Rate(Bray(20), "6.4", Line);

        var converted = Assert.Single(reply.Json["converted"]!.AsArray())!;
        Assert.True((bool)converted["estimate"]!);
        Assert.Equal(20m, (decimal)converted["original"]!["value"]!);
        Assert.Equal(27m, (decimal)converted["rating"]!["value"]!["value"]!);
        Assert.Equal("mehlich-3", (string?)converted["rating"]!["value"]!["extractant"]);
        Assert.Contains(converted["assumptions"]!.AsArray(), a => (string?)a!["code"] == "method-conversion");
        Assert.Equal(20m, (decimal)reply.Json["ratings"]!.AsArray().Single(r => (string?)r!["analyte"] == "P")!["value"]!["value"]!);
    }

    [Fact]
    public async Task The_estimate_is_less_sure_than_a_measurement_of_the_same_number()
    {
        var estimate = (await Rate(Bray(20), "6.4", Line)).Json["converted"]![0]!["rating"]!["likely"]!;
        var measured = (await Rate("""{"analyte":"P","value":27,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""", "6.4")).Json["ratings"]!.AsArray().Single(r => (string?)r!["analyte"] == "P")!["likely"]!;

        Assert.True((decimal)estimate["low"]! < (decimal)measured["low"]!);
        Assert.True((decimal)estimate["high"]! > (decimal)measured["high"]!);
    }

    [Fact]
    public async Task Nothing_is_converted_that_is_not_named() => Assert.Null((await Rate(Bray(20), "6.4")).Json["converted"]);

    // The line does not hold above pH 7.4; 7.4 itself is not above it.
    [Theory]
    [InlineData("7.4", null)]
    [InlineData("7.5", "conversion-on-calcareous-soil")]
    public async Task Where_the_line_does_not_hold_it_is_refused_at_its_place(string ph, string? code)
    {
        var reply = await Rate(Bray(20), ph, Line);

        Assert.Equal(code, reply.Refused.FirstOrDefault(f => f.Pointer == "/conversions/0")?.Code);
    }

    [Fact]
    public async Task An_unknown_line_is_refused_with_the_nearest_name()
    {
        var fault = (await Rate(Bray(20), "6.4", "bray-p1-to-mehlich-3-phosphorus")).Refused.First(f => f.Pointer == "/conversions/0");

        Assert.Equal("unknown-method-conversion", fault.Code);
        Assert.Contains(Line, fault.Suggestion, StringComparison.Ordinal);
    }

    private static string Bray(int value) => string.Create(CultureInfo.InvariantCulture, $$"""{"analyte":"P","value":{{value}},"unit":"mg/kg","extractant":"bray-p1","detection":"colorimetric"}""");

    private Task<Reply> Rate(string reading, string ph, params string[] conversions)
    {
        var request = new JsonObject { ["region"] = "US-OH", ["soilTest"] = Requests.SoilTest(reading, $$"""{"analyte":"pH","value":{{ph}},"method":"water-1:1"}""") };
        if (conversions.Length > 0)
        {
            request["conversions"] = new JsonArray([.. conversions.Select(c => (JsonNode)c)]);
        }

        return service.PostAsync("/v1/ratings", request);
    }
}
