namespace SoilAdvisor.Api.Tests.Catalogues;

public sealed class CatalogueTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string> Names => ["guides", "crops", "materials", "cover-crops", "lime-methods", "method-conversions", "rules", "sources", "limits", "formulas"];

    [Theory, MemberData(nameof(Names))]
    public async Task Each_entry_of_a_list_is_found_by_its_id(string name)
    {
        var items = (await service.GetAsync($"/v1/{name}")).Json["items"]!.AsArray();

        Assert.NotEmpty(items);
        foreach (var item in items)
        {
            var entry = await service.GetAsync($"/v1/{name}/{(string)item!["id"]!}");
            Assert.Equal(HttpStatusCode.OK, entry.Status);
            Assert.True(JsonNode.DeepEquals(item, entry.Json["item"]));
        }
    }

    [Theory, MemberData(nameof(Names))]
    public async Task A_list_that_did_not_change_is_not_sent_again(string name)
    {
        var first = await service.GetAsync($"/v1/{name}");
        using var again = new HttpRequestMessage(HttpMethod.Get, $"/v1/{name}");
        again.Headers.IfNoneMatch.Add(first.Message.Headers.ETag!);
        var second = await Reply.OfAsync(await service.Client.SendAsync(again));

        Assert.Equal(HttpStatusCode.NotModified, second.Status);
        Assert.Empty(second.Text);
    }

    [Fact]
    public async Task Another_tag_is_answered_with_the_list()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/crops");
        request.Headers.IfNoneMatch.Add(new("\"older\""));

        Assert.Equal(HttpStatusCode.OK, (await service.Client.SendAsync(request)).StatusCode);
    }

    // Delaware, 3 Del. C. 2202 and 2247 as restated: high phosphorus is above 150 ppm.
    [Fact]
    public async Task A_guide_lists_its_limits_of_law_with_their_source()
    {
        var ceiling = Assert.Single((await service.GetAsync("/v1/guides/delaware-vegetables")).Json["item"]!["ceilings"]!.AsArray())!;

        Assert.Equal((150m, "mg/kg"), ((decimal)ceiling["limit"]!["value"]!, (string?)ceiling["limit"]!["unit"]));
        Assert.False((bool)ceiling["limitIncluded"]!);
        Assert.Equal("seen", (string?)ceiling["evidence"]);
        Assert.False(string.IsNullOrEmpty((string?)ceiling["source"]));
    }

    // Sims et al. 2002, abstract: 0.06 to 0.11 is optimum, above 0.15 environmental.
    [Fact]
    public async Task A_guide_lists_its_indices_with_their_inputs_scales_and_source()
    {
        var index = Assert.Single((await service.GetAsync("/v1/guides/delaware-sims-2002")).Json["item"]!["indices"]!.AsArray())!;

        Assert.Equal(["P", "Al", "Fe"], index["inputs"]!.AsArray().Select(i => (string?)i!["analyte"]));
        Assert.Equal((0.06m, 0.11m), Assert.Single(index["scales"]![0]!["classes"]!.AsArray(), c => (string?)c!["class"] == "Optimum") is var optimum ? ((decimal)optimum!["lower"]!, (decimal)optimum["upper"]!) : default);
        Assert.Equal(("sims2002", "from-memory"), ((string?)index["source"], (string?)index["evidence"]));
    }

    [Theory]
    [InlineData("crops/brocoli", "unknown-crop", "broccoli")]
    [InlineData("guides/delaware", "unknown-guide", "delaware-vegetables")]
    [InlineData("rules/land-36-month", "unknown-rule", "land-36-months")]
    [InlineData("sources/ud-p", "unknown-source", "ud-ph")]
    [InlineData("limits/bed", "unknown-limit", "beds")]
    [InlineData("lime-methods/smp-iow", "unknown-lime-method", "smp-iowa")]
    public async Task An_unknown_id_is_answered_with_the_nearest(string path, string code, string nearest)
    {
        var reply = await service.GetAsync("/v1/" + path);

        Assert.Equal(HttpStatusCode.NotFound, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal(("id", code), (fault.Pointer, fault.Code));
        Assert.Contains(nearest, fault.Suggestion, StringComparison.Ordinal);
    }
}
