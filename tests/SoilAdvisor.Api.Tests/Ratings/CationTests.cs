namespace SoilAdvisor.Api.Tests.Ratings;

/// <summary>Exchange capacity and base saturation beside the ratings.</summary>
public sealed class CationTests(Service service) : IClassFixture<Service>
{
    private const string Calcium = """{"analyte":"Ca","value":1000,"unit":"mg/kg","extractant":"mehlich-3"}""";
    private const string Magnesium = """{"analyte":"Mg","value":120,"unit":"mg/kg","extractant":"mehlich-3"}""";
    private const string Potassium = """{"analyte":"K","value":150,"unit":"mg/kg","extractant":"mehlich-3"}""";
    private const string Acidity = """{"analyte":"acidity","value":2,"unit":"meq/100g"}""";

    [Fact]
    public async Task The_parts_and_the_acidity_fill_the_exchange()
    {
        var cations = await Cations(Calcium, Magnesium, Potassium, Acidity, Ph("6.0"));

        var parts = cations["parts"]!.AsArray();
        Assert.Equal("information", (string?)cations["standing"]);
        Assert.Equal(["Ca", "Mg", "K"], parts.Take(3).Select(p => (string?)p!["cation"]));
        Assert.InRange(parts.Sum(p => (decimal)p!["saturation"]!) + (decimal)cations["acidity"]!["saturation"]!, 99.9m, 100.1m);
        Assert.InRange((decimal)cations["bases"]!["value"]! + 2m - (decimal)cations["capacity"]!["value"]!, -0.01m, 0.01m);
    }

    [Fact]
    public async Task The_set_of_weights_is_named_and_what_trials_found_stands_beside()
    {
        var cations = await Cations(Calcium, Magnesium, Potassium, Acidity, Ph("6.0"));

        Assert.False(string.IsNullOrEmpty((string?)cations["weights"]!["id"]));
        Assert.NotEmpty(cations["trials"]!.AsArray());
        Assert.All(cations["trials"]!.AsArray(), t => Assert.False(string.IsNullOrEmpty((string?)t!["source"])));
    }

    // Above pH 7.3 there is no verdict; 7.3 itself is not above it.
    [Theory]
    [InlineData("7.3", false)]
    [InlineData("7.4", true)]
    public async Task Above_the_highest_pH_there_is_no_balance_and_the_answer_says_why(string ph, bool refused)
    {
        var cations = await Cations(Calcium, Magnesium, Potassium, Acidity, Ph(ph));

        Assert.Equal(refused ? "ph-above-cation-limit" : null, (string?)cations["refused"]?["code"]);
        Assert.Equal(refused, cations["capacity"] is null);
    }

    [Fact]
    public async Task A_test_without_calcium_and_magnesium_is_not_asked_for_them()
    {
        var reply = await service.PostAsync("/v1/ratings", Requests.Ratings(Requests.Phosphorus));

        Assert.Null(reply.Json["cations"]);
    }

    [Fact]
    public async Task No_balance_refuses_nothing_of_the_ratings()
    {
        var reply = await service.PostAsync("/v1/ratings?strict=true", Requests.Ratings(Calcium, Magnesium));

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Equal("/soilTest", (string?)reply.Json["cations"]!["refused"]!["pointer"]);
    }

    private static string Ph(string value) => $$"""{"analyte":"pH","value":{{value}},"method":"water-1:1"}""";

    private async Task<JsonNode> Cations(params string[] readings) => (await service.PostAsync("/v1/ratings", Requests.Ratings(readings))).Json["cations"]!;
}
