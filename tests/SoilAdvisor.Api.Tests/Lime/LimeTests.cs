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
}
