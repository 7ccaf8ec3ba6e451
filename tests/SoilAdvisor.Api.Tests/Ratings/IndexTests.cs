namespace SoilAdvisor.Api.Tests.Ratings;

/// <summary>Indices that a guide computes, and limits of law beside its classes.</summary>
public sealed class IndexTests(Service service) : IClassFixture<Service>
{
    private const string Phosphorus = """{"analyte":"P","value":120,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""";
    private const string Aluminium = """{"analyte":"Al","value":800,"unit":"mg/kg","extractant":"mehlich-3"}""";
    private const string Iron = """{"analyte":"Fe","value":150,"unit":"mg/kg","extractant":"mehlich-3"}""";

    // Molar ratio of Mehlich-3 phosphorus to aluminium and iron: (120 / 30.973762) / (800 / 26.981538 + 150 / 55.845) = 3.874247 / 32.335801 = 0.119813.
    [Fact]
    public async Task The_phosphorus_saturation_ratio_stands_apart_from_the_classes_of_phosphorus()
    {
        var reply = await Rate(Phosphorus, Aluminium, Iron);

        var index = reply.Json["indices"]!.AsArray().Single(i => (string?)i!["about"] == "P" && i["value"] is not null)!;
        Assert.InRange((decimal)index["value"]!["value"]!, 0.1197m, 0.1199m);
        Assert.NotNull(index["class"]);
        Assert.False(string.IsNullOrEmpty((string?)index["source"]));
        Assert.DoesNotContain(reply.Json["ratings"]!.AsArray(), r => (string?)r!["class"] == (string?)index["class"] && (string?)r["analyte"] == "Al");
    }

    [Fact]
    public async Task An_index_without_its_aluminium_is_not_asked_for()
    {
        var reply = await Rate(Phosphorus);

        Assert.Null(reply.Json["indices"]);
    }

    [Fact]
    public async Task A_missing_input_is_named_and_refuses_nothing_else()
    {
        var reply = await Rate(Phosphorus, Iron);

        var index = Assert.Single(reply.Json["indices"]!.AsArray())!;
        Assert.Equal("index-input-missing", (string?)index["refused"]!["code"]);
        Assert.Equal("/soilTest/readings/0", (string?)index["refused"]!["pointer"]);
        Assert.Contains(reply.Json["ratings"]!.AsArray(), r => (string?)r!["analyte"] == "P");
    }

    private Task<Reply> Rate(params string[] readings)
    {
        var request = Requests.Ratings(readings);
        request["guide"] = "delaware-sims-2002";
        return service.PostAsync("/v1/ratings", request);
    }
}
