namespace SoilAdvisor.Api.Tests.Contract;

public sealed class OpenApiTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task The_committed_document_is_the_one_that_is_served()
    {
        var served = (await service.GetAsync("/openapi/v1.json")).Text.ReplaceLineEndings("\n").TrimEnd() + "\n";
        var committed = Path.Combine(MarkdownBlocks.Folder, "openapi.json");
        if (!File.Exists(committed) || await File.ReadAllTextAsync(committed) != served)
        {
            await File.WriteAllTextAsync(committed + ".received", served);
        }

        Assert.True(await File.ReadAllTextAsync(committed) == served, "docs/openapi.json differs from what the service serves. Review docs/openapi.json.received and keep it if the change is meant.");
    }

    [Fact]
    public async Task Each_operation_has_a_summary_and_says_how_it_succeeds_and_fails()
    {
        var document = (await service.GetAsync("/openapi/v1.json")).Json;

        Assert.StartsWith("3.1", (string?)document["openapi"], StringComparison.Ordinal);
        var operations = document["paths"]!.AsObject().SelectMany(p => p.Value!.AsObject().Select(o => (Name: $"{o.Key} {p.Key}", Operation: o.Value!))).ToList();
        Assert.Equal(35, operations.Count);
        Assert.All(operations, o =>
        {
            Assert.False(string.IsNullOrWhiteSpace((string?)o.Operation["summary"]), o.Name);
            var statuses = o.Operation["responses"]!.AsObject().Select(r => r.Key).ToList();
            Assert.Contains("200", statuses);
            Assert.True(statuses.Count > 1 || o.Name == "get /health", o.Name);
        });
    }

    [Fact]
    public async Task The_page_lists_each_operation_and_loads_nothing_from_elsewhere()
    {
        var page = await service.GetAsync("/docs");
        var document = (await service.GetAsync("/openapi/v1.json")).Json;

        Assert.Equal("text/html", page.MediaType);
        Assert.All(document["paths"]!.AsObject(), p => Assert.Contains(p.Key, page.Text, StringComparison.Ordinal));
        Assert.DoesNotContain("http://", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("https://", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Health_names_the_versions()
    {
        var reply = await service.GetAsync("/health");

        Assert.Equal("ok", (string?)reply.Json["status"]);
        Assert.Equal("v1", (string?)reply.Json["versions"]!["api"]);
        Assert.Equal(16, ((string)reply.Json["versions"]!["tables"]!).Length);
    }
}
