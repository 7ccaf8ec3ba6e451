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
