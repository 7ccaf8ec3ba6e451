namespace SoilAdvisor.Api.Tests.Plans;

public sealed class PlanLimitsTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task One_bed_too_many_refuses_the_plan()
    {
        var reply = await service.PostAsync("/v1/plans", Requests.Plan([.. Enumerable.Range(0, 501).Select(i => Requests.Bed(i.ToString(CultureInfo.InvariantCulture)))]));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal(("/beds", "too-many"), (fault.Pointer, fault.Code));
        Assert.Contains("501 beds; one request may hold 500", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_largest_number_of_beds_is_planned()
    {
        var reply = await service.PostAsync("/v1/plans", Requests.Plan([.. Enumerable.Range(0, 500).Select(i => Requests.Bed(i.ToString(CultureInfo.InvariantCulture)))]));

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Equal(500, reply.Json["beds"]!.AsArray().Count(b => (string?)b!["state"] == "planned"));
    }

    [Theory]
    [InlineData(100, false)]
    [InlineData(101, true)]
    public async Task Materials_are_limited_to_100(int count, bool refused)
    {
        var plan = Requests.Plan();
        plan["materials"] = new JsonArray([.. Enumerable.Range(0, count).Select(_ => JsonNode.Parse("""{"material":"blood-meal"}"""))]);
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Equal(refused, reply.Errors.Any(e => e is { Pointer: "/materials", Code: "too-many" }));
    }

    [Theory]
    [InlineData(64, false)]
    [InlineData(65, true)]
    public async Task An_id_holds_64_letters(int letters, bool refused)
    {
        var bed = Requests.Bed(new string('x', letters));
        var reply = await service.PostAsync("/v1/plans", Requests.Plan(Requests.Bed("A1"), bed));

        Assert.Equal(refused, reply.Refused.Any(e => e is { Pointer: "/beds/1/id", Code: "text-too-long" }));
    }

    [Theory]
    [InlineData(200, false)]
    [InlineData(201, true)]
    public async Task Soil_tests_are_limited_to_200(int count, bool refused)
    {
        var plan = Requests.Plan();
        plan["soilTests"] = new JsonArray([.. Enumerable.Range(0, count).Select(i =>
        {
            var test = Requests.SoilTest();
            test["id"] = i == 0 ? "North" : i.ToString(CultureInfo.InvariantCulture);
            return test;
        })]);
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Equal(refused, reply.Errors.Any(e => e is { Pointer: "/soilTests", Code: "too-many" }));
    }

    [Fact]
    public async Task The_limits_are_listed()
    {
        var reply = await service.GetAsync("/v1/limits");

        var limits = reply.Json["items"]!.AsArray().ToDictionary(l => (string)l!["id"]!, l => (decimal)l!["value"]!);
        Assert.Equal(1_048_576, limits["body"]);
        Assert.Equal((500, 200, 100, 64, 30), (limits["beds"], limits["soil-tests"], limits["materials"], limits["id-letters"], limits["request-time"]));
    }
}
