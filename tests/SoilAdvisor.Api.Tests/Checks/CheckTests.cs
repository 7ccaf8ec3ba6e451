namespace SoilAdvisor.Api.Tests.Checks;

public sealed class CheckTests(Service service) : IClassFixture<Service>
{
    // 7 CFR 205.203(c)(1): 120 days before harvest where the edible part touches soil, 90 days where it does not.
    [Theory]
    [InlineData("contact", "2027-02-12", true)]
    [InlineData("contact", "2027-02-13", false)]
    [InlineData("no-contact", "2027-03-14", true)]
    [InlineData("no-contact", "2027-03-15", false)]
    public async Task Raw_manure_is_held_against_the_days_to_first_harvest(string placement, string incorporated, bool passes)
    {
        var check = Requests.Check();
        check["bed"]!["crops"]![0]!["placement"] = placement;
        check["bed"]!["crops"]![0]!["firstHarvest"] = "2027-06-12";
        check["bed"]!["applied"]![0]!["date"] = incorporated;
        check["bed"]!["applied"]![0]!["incorporated"] = incorporated;
        var reply = await service.PostAsync("/v1/checks", check);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        var finding = reply.Json["findings"]!.AsArray().Single(f => ((string)f!["section"]!).Contains("205.203(c)(1)", StringComparison.Ordinal) && ((string)f["message"]!).Contains("days", StringComparison.Ordinal))!;
        Assert.Equal(passes ? "pass" : "act", (string?)finding["state"]);
    }

    [Fact]
    public async Task A_prohibited_material_on_the_shelf_is_an_act()
    {
        var prohibited = (await service.GetAsync("/v1/materials")).Json["items"]!.AsArray().First(m => (string?)m!["organicStatus"] == "prohibited")!;
        var reply = await service.PostAsync("/v1/checks", new JsonObject { ["materials"] = new JsonArray(new JsonObject { ["material"] = (string)prohibited["id"]! }) });

        var finding = Assert.Single(reply.Json["findings"]!.AsArray())!;
        Assert.Equal("act", (string?)finding["state"]);
        Assert.False(string.IsNullOrWhiteSpace((string?)finding["section"]));
    }

    [Fact]
    public async Task Nothing_to_check_is_a_fault()
    {
        var reply = await service.PostAsync("/v1/checks", "{}");

        Assert.Equal(("/bed", "nothing-to-check"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Fact]
    public async Task A_standard_that_is_not_held_is_refused_with_those_that_are()
    {
        var check = Requests.Check();
        check["standard"] = "lunar";
        var reply = await service.PostAsync("/v1/checks", check);

        var fault = Assert.Single(reply.Errors);
        Assert.Equal(("/standard", "unknown-standard"), (fault.Pointer, fault.Code));
        Assert.Contains("7 CFR part 205", fault.Suggestion, StringComparison.Ordinal);
    }
}
