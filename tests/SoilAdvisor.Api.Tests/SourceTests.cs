namespace SoilAdvisor.Api.Tests;

/// <summary>A number without its source does not leave the house.</summary>
public sealed class SourceTests(Service service) : IClassFixture<Service>
{
    // Readings echoed to the caller are the laboratory's own; their source is the report. Years and links describe the sources themselves.
    private static readonly string[] NotOurNumbers = ["soilTests", "sources", "versions"];

    public static TheoryData<string, string?> Addresses => new()
    {
        { "/v1/ratings?working=true", Requests.Ratings().ToJsonString() },
        { "/v1/lime?working=true", Requests.Lime().ToJsonString() },
        { "/v1/plans?working=true", Requests.Plan().ToJsonString() },
        { "/v1/plans?units=metric", Requests.Plan().ToJsonString() },
        { "/v1/cover-crops", Requests.CoverCrops().ToJsonString() },
        { "/v1/cover-crops/nitrogen?working=true", Requests.Nitrogen().ToJsonString() },
        { "/v1/checks?working=true", Requests.Check().ToJsonString() },
        { "/v1/formulas/cover-crop-plant-available-nitrogen", """{"inputs":{"n":3.5}}""" },
        { "/v1/lab-files", new JsonObject { ["soilTests"] = new JsonArray(Requests.FullSoilTest()) }.ToJsonString() },
        { "/v1/guides", null }, { "/v1/crops", null }, { "/v1/materials", null }, { "/v1/cover-crops", null }, { "/v1/lime-methods", null },
        { "/v1/rules", null }, { "/v1/limits", null }, { "/v1/formulas", null },
    };

    [Theory, MemberData(nameof(Addresses))]
    public async Task Each_number_stands_beside_a_source_that_is_listed(string path, string? body)
    {
        var reply = body is null ? await service.GetAsync(path) : await service.PostAsync(path, body);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        var listed = reply.Json["sources"]!.AsArray().Select(s => (string)s!["id"]!).ToHashSet(StringComparer.Ordinal);
        var unsourced = Unsourced(reply.Json, "", null, listed).ToList();
        Assert.Empty(unsourced);
    }

    [Theory, MemberData(nameof(Addresses))]
    public async Task Only_sources_that_are_used_are_listed_and_each_says_how_it_was_read(string path, string? body)
    {
        var reply = body is null ? await service.GetAsync(path) : await service.PostAsync(path, body);

        var used = Members(reply.Json, "source").Concat(Lists(reply.Json, "sources")).ToHashSet(StringComparer.Ordinal);
        Assert.All(reply.Json["sources"]!.AsArray(), s =>
        {
            Assert.Contains((string)s!["id"]!, used);
            Assert.NotEmpty(s["evidence"]!.AsArray());
        });
        Assert.NotNull(reply.Json["assumptions"]);
        Assert.NotNull(reply.Json["versions"]!["tables"]);
    }

    private static IEnumerable<string> Unsourced(JsonNode? node, string pointer, string? source, HashSet<string> listed)
    {
        switch (node)
        {
            case JsonObject members:
                var here = members["source"] is JsonValue named ? (string?)named : source;
                return members.Where(m => !NotOurNumbers.Contains(m.Key) || m.Value is JsonArray { Count: > 0 } list && list[0] is JsonValue)
                    .SelectMany(m => Unsourced(m.Value, $"{pointer}/{m.Key}", here, listed));
            case JsonArray items:
                return items.SelectMany((item, i) => Unsourced(item, string.Create(CultureInfo.InvariantCulture, $"{pointer}/{i}"), source, listed));
            case JsonValue value when value.GetValueKind() == JsonValueKind.Number && (source is null || !listed.Contains(source)):
                return [$"{pointer} = {value} ({source ?? "no source"})"];
            default:
                return [];
        }
    }

    private static IEnumerable<string> Members(JsonNode? node, string name) => node switch
    {
        JsonObject members => members.SelectMany(m => m.Key == name && m.Value is JsonValue value ? [(string)value!] : Members(m.Value, name)),
        JsonArray items => items.SelectMany(i => Members(i, name)),
        _ => [],
    };

    private static IEnumerable<string> Lists(JsonNode? node, string name) => node switch
    {
        JsonObject members => members.SelectMany(m => m.Key == name && m.Value is JsonArray { Count: > 0 } list && list[0] is JsonValue ? list.Select(i => (string)i!) : Lists(m.Value, name)),
        JsonArray items => items.SelectMany(i => Lists(i, name)),
        _ => [],
    };
}
