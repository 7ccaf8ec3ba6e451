namespace SoilAdvisor.Api.Tests.SoilTests;

/// <summary>Likely mix-ups are named at their place, and everything is computed all the same.</summary>
public sealed class SuspicionTests(Service service) : IClassFixture<Service>
{
    // Soils hold hundreds of mg/kg of calcium; 8 is what a report in meq/100g prints.
    private const string Calcium = """{"analyte":"Ca","value":8,"unit":"mg/kg","extractant":"mehlich-3"}""";

    [Fact]
    public async Task A_rating_names_the_reading_in_doubt_and_still_rates_it()
    {
        var reply = await service.PostAsync("/v1/ratings?strict=true", Requests.Ratings(Requests.Phosphorus, Calcium));

        var suspicion = Assert.Single(reply.Json["suspicions"]!.AsArray())!;
        Assert.Equal("/soilTest/readings/1", (string?)suspicion["pointer"]);
        Assert.Equal("milliequivalents-read-as-ppm", (string?)suspicion["code"]);
        Assert.Contains("meq/100g", (string?)suspicion["suggestion"], StringComparison.Ordinal);
        Assert.False(string.IsNullOrEmpty((string?)suspicion["source"]));
        Assert.Contains(reply.Json["ratings"]!.AsArray(), r => (string?)r!["analyte"] == "Ca");
    }

    [Fact]
    public async Task A_plan_names_it_with_the_place_of_its_soil_test()
    {
        var plan = Requests.Plan();
        plan["soilTests"]![0]!["readings"]!.AsArray().Add(JsonNode.Parse(Calcium));
        var place = plan["soilTests"]![0]!["readings"]!.AsArray().Count - 1;

        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Contains(reply.Json["suspicions"]!.AsArray(), s => (string?)s!["pointer"] == string.Create(CultureInfo.InvariantCulture, $"/soilTests/0/readings/{place}"));
    }

    [Fact]
    public async Task A_lab_file_names_it_in_the_soil_tests_that_come_back()
    {
        var reply = await service.PostAsync("/v1/lab-files", "id,\"Ca (mg/kg, Mehlich-3)\"\nNorth,8\n", "text/csv");

        Assert.Equal("/soilTests/0/readings/0", (string?)Assert.Single(reply.Json["suspicions"]!.AsArray())!["pointer"]);
        Assert.Equal("Ca", (string?)reply.Json["soilTests"]![0]!["readings"]![0]!["analyte"]);
    }

    [Fact]
    public async Task A_report_says_it_before_any_number()
    {
        var plan = Requests.Plan();
        plan["soilTests"]![0]!["readings"]!.AsArray().Add(JsonNode.Parse(Calcium));

        var report = await service.PostAsync("/v1/plans", plan.ToJsonString(), accept: "text/markdown");

        Assert.InRange(report.Text.IndexOf("## Look at these numbers first", StringComparison.Ordinal), 0, report.Text.IndexOf("## Farm sheet", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_sound_test_has_none()
    {
        var reply = await service.PostAsync("/v1/ratings", Requests.Ratings(Requests.Phosphorus));

        Assert.Null(reply.Json["suspicions"]);
    }
}
