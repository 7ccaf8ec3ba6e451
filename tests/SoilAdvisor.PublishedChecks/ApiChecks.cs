using System.Net.Http.Json;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.TestHost;

namespace SoilAdvisor.PublishedChecks;

/// <summary>The same printed answers, asked over HTTP: what a co-op's program gets is what the library says.</summary>
public sealed class ApiChecks : IClassFixture<ApiChecks.Service>
{
    private readonly HttpClient client;

    public ApiChecks(Service service) => client = service.Client;

    public static TheoryData<PublishedExample> Formulas => PublishedExamples.OfFormulas();

    /// <summary>The ratings whose context a request can state: crop groups are chosen by the crop there.</summary>
    public static TheoryData<PublishedExample> Ratings => [.. PublishedExamples.All.Where(e => e.Topic == "ratings" && !e.Given.TryGetProperty("cropGroup", out _))];

    public static TheoryData<PublishedExample> Recommendations => PublishedExamples.Of("recommendations");

    [Theory]
    [MemberData(nameof(Formulas))]
    public async Task A_formula_asked_over_HTTP_gives_the_printed_answer(PublishedExample example)
    {
        var inputs = JsonObject.Create(example.Given.GetProperty("symbols"));
        var expected = example.ExpectedAs<PrintedNumber>();

        var answer = await AskAsync($"/v1/formulas/{example.Formula}", new JsonObject { ["inputs"] = inputs }, example);

        var result = answer.GetProperty("result");
        Assert.Equal(expected.Unit, result.GetProperty("unit").GetString());
        example.AgreesWith(expected.Value, result.GetProperty("value").GetDouble(), $"response: {answer}");
    }

    [Theory]
    [MemberData(nameof(Ratings))]
    public async Task A_rating_asked_over_HTTP_names_the_printed_class(PublishedExample example)
    {
        foreach (var value in example.Given.GetProperty("values").EnumerateArray())
        {
            var answer = await AskAsync("/v1/ratings", Request(example.Given, value), example);

            var analyte = example.Given.GetProperty("analyte").GetString();
            var rating = answer.GetProperty("ratings").EnumerateArray().SingleOrDefault(r => r.GetProperty("analyte").GetString() == analyte);
            var got = rating.ValueKind == JsonValueKind.Undefined ? "no rating" : rating.GetProperty("class").GetString();
            Assert.True(got == example.Expected.GetProperty("class").GetString(), example.Explain($"{value} → {got}", $"response: {answer}"));
        }
    }

    [Theory]
    [MemberData(nameof(Recommendations))]
    public async Task A_plan_asked_over_HTTP_needs_the_printed_rate(PublishedExample example)
    {
        var expected = example.ExpectedAs<PrintedNeed>();
        var request = new JsonObject
        {
            ["guide"] = example.Given.GetProperty("guide").GetString(),
            ["soilTests"] = new JsonArray(new JsonObject { ["id"] = "published", ["readings"] = new JsonArray(Reading(example.Given, example.Given.GetProperty("value"))) }),
            ["beds"] = new JsonArray(new JsonObject
            {
                ["id"] = "bed",
                ["soilTest"] = "published",
                ["length"] = new JsonObject { ["value"] = 100, ["unit"] = "ft" },
                ["width"] = new JsonObject { ["value"] = 30, ["unit"] = "in" },
                ["crops"] = new JsonArray(new JsonObject { ["crop"] = example.Given.GetProperty("crop").GetString() }),
            }),
        };
        if (example.Given.TryGetProperty("subregion", out var subregion))
        {
            request["subregion"] = subregion.GetString();
        }

        var answer = await AskAsync("/v1/plans", request, example);

        var need = answer.GetProperty("beds")[0].GetProperty("need").EnumerateArray().SingleOrDefault(n => n.GetProperty("nutrient").GetString() == expected.Nutrient.ToString());
        if (need.ValueKind == JsonValueKind.Undefined)
        {
            Assert.Fail(example.Explain("no such need", $"response: {answer}"));
        }

        var rate = need.GetProperty("rate");
        Assert.Equal(expected.Unit, rate.GetProperty("unit").GetString());
        example.AgreesWith(expected.Low, rate.GetProperty("low").GetDouble(), $"need: {need}");
        example.AgreesWith(expected.High ?? expected.Low, rate.GetProperty("high").GetDouble(), $"need: {need}");
    }

    private static JsonObject Reading(JsonElement given, JsonElement value)
    {
        var reading = new JsonObject { ["value"] = JsonNode.Parse(value.GetRawText()) };
        foreach (var name in new[] { "analyte", "unit", "extractant", "detection", "method" })
        {
            if (given.TryGetProperty(name, out var stated))
            {
                reading[name] = stated.GetString();
            }
        }

        return reading;
    }

    private static JsonObject Request(JsonElement given, JsonElement value)
    {
        var soilTest = new JsonObject { ["id"] = "published", ["readings"] = new JsonArray(Reading(given, value)) };
        if (given.TryGetProperty("texture", out var texture))
        {
            soilTest["texture"] = texture.GetString();
        }

        if (given.TryGetProperty("cec", out var cec))
        {
            soilTest["readings"]!.AsArray().Add(new JsonObject { ["analyte"] = "cec", ["value"] = JsonNode.Parse(cec.GetRawText()), ["unit"] = "meq/100g" });
        }

        var request = new JsonObject { ["guide"] = given.GetProperty("guide").GetString(), ["soilTest"] = soilTest };
        if (given.TryGetProperty("subregion", out var subregion))
        {
            request["subregion"] = subregion.GetString();
        }

        return request;
    }

    private async Task<JsonElement> AskAsync(string path, JsonObject request, PublishedExample example)
    {
        using var response = await client.PostAsJsonAsync(new Uri(path, UriKind.Relative), request);
        var body = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, example.Explain($"{(int)response.StatusCode} {body}", $"request: POST {path} {request.ToJsonString()}"));
        return JsonDocument.Parse(body).RootElement;
    }

    /// <summary>The service on a test server, started once.</summary>
    public sealed class Service : IAsyncLifetime
    {
        private readonly Microsoft.AspNetCore.Builder.WebApplication app = Api.Host.Build([], builder => builder.WebHost.UseTestServer());

        public HttpClient Client { get; private set; } = null!;

        public async Task InitializeAsync()
        {
            await app.StartAsync();
            Client = app.GetTestClient();
        }

        public async Task DisposeAsync()
        {
            Client.Dispose();
            await app.DisposeAsync();
        }
    }
}
