using System.Net.Http.Headers;
using System.Text.RegularExpressions;

namespace SoilAdvisor.Api.Tests.Contract;

/// <summary>Every example of docs/api.md, executed as it stands; the answer must hold what the page shows.</summary>
public sealed partial class ApiDocumentTests(Service service) : IClassFixture<Service>
{
    private const string Address = "http://localhost:8080";

    public static TheoryData<string, string, string> Examples()
    {
        var examples = new TheoryData<string, string, string>();
        var blocks = MarkdownBlocks.Of("api.md");
        for (var i = 0; i < blocks.Count; i++)
        {
            if (blocks[i].Info.StartsWith("sh", StringComparison.Ordinal) && blocks[i].Text.Contains("curl ", StringComparison.Ordinal))
            {
                var shown = i + 1 < blocks.Count && !blocks[i + 1].Info.StartsWith("sh", StringComparison.Ordinal) ? blocks[i + 1] : ("", "");
                examples.Add(blocks[i].Text, shown.Item1, shown.Item2);
            }
        }

        return examples;
    }

    [Theory, MemberData(nameof(Examples))]
    public async Task An_example_answers_what_the_page_shows(string command, string kind, string shown)
    {
        using var request = Read(command);
        var reply = await Reply.OfAsync(await service.Client.SendAsync(request));

        if (kind == "json")
        {
            var expected = JsonNode.Parse(shown)!;
            Assert.Empty(Missing(expected, reply.Json, ""));
            Assert.Equal(expected["errors"] is null || expected["soilTests"] is not null ? 200 : (int)expected["status"]!, (int)reply.Status);
        }
        else
        {
            Assert.Equal(HttpStatusCode.OK, reply.Status);
            Assert.All(shown.Split('\n', StringSplitOptions.RemoveEmptyEntries), line => Assert.Contains(line, reply.Text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Each_address_of_the_contract_has_an_example()
    {
        var commands = string.Join('\n', Examples().Select(e => (string)e[0]));

        Assert.All(
            new[] { "/v1/lab-files", "/v1/ratings", "/v1/lime", "/v1/plans", "/v1/cover-crops", "/v1/cover-crops/nitrogen", "/v1/checks", "/v1/sampling", "/v1/formulas/", "/v1/guides", "/v1/limits", "/health" },
            path => Assert.Contains(Address + path, commands, StringComparison.Ordinal));
    }

    private static HttpRequestMessage Read(string command)
    {
        var words = Words().Matches(command.Replace("\\\n", " ", StringComparison.Ordinal)).Select(m => m.Value.StartsWith('\'') ? m.Value[1..^1] : m.Value).ToList();
        var request = new HttpRequestMessage { Method = HttpMethod.Get };
        var headers = new List<(string Name, string Value)>();
        byte[]? body = null;
        for (var i = 1; i < words.Count; i++)
        {
            switch (words[i])
            {
                case "-s":
                    break;
                case "-H":
                    var parts = words[++i].Split(':', 2, StringSplitOptions.TrimEntries);
                    headers.Add((parts[0], parts[1]));
                    break;
                case "-d" or "--data-binary":
                    var data = words[++i];
                    body = data.StartsWith('@') ? File.ReadAllBytes(Path.Combine(MarkdownBlocks.Folder, "..", data[1..])) : Encoding.UTF8.GetBytes(data);
                    break;
                default:
                    Assert.StartsWith(Address, words[i], StringComparison.Ordinal);
                    request.RequestUri = new Uri(words[i][Address.Length..], UriKind.Relative);
                    break;
            }
        }

        if (body is not null)
        {
            request.Method = HttpMethod.Post;
            request.Content = new ByteArrayContent(body);
        }

        foreach (var (name, value) in headers)
        {
            if (name.Equals("Content-Type", StringComparison.OrdinalIgnoreCase))
            {
                request.Content!.Headers.ContentType = MediaTypeHeaderValue.Parse(value);
            }
            else
            {
                request.Headers.TryAddWithoutValidation(name, value);
            }
        }

        return request;
    }

    // What the page shows may leave members and later entries of a list out; what it shows must be so.
    private static IEnumerable<string> Missing(JsonNode? expected, JsonNode? got, string pointer) => (expected, got) switch
    {
        (JsonObject e, JsonObject g) => e.SelectMany(m => Missing(m.Value, g[m.Key], $"{pointer}/{m.Key}")),
        (JsonArray e, JsonArray g) when e.Count <= g.Count => e.SelectMany((item, i) => Missing(item, g[i], string.Create(CultureInfo.InvariantCulture, $"{pointer}/{i}"))),
        _ => JsonNode.DeepEquals(expected, got) ? [] : [$"{pointer}: the page shows {expected?.ToJsonString()}, the answer is {got?.ToJsonString()}"],
    };

    [GeneratedRegex(@"'[^']*'|[^\s']+")]
    private static partial Regex Words();
}
