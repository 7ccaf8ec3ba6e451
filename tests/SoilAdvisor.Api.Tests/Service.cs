using System.Net.Http.Headers;
using Microsoft.AspNetCore.Mvc.Testing;

namespace SoilAdvisor.Api.Tests;

/// <summary>The real program in this process, with a client. One for all tests of a class: it keeps no state between requests.</summary>
public sealed class Service : WebApplicationFactory<Program>
{
    private HttpClient? client;

    public HttpClient Client => client ??= CreateClient();

    public async Task<Reply> PostAsync(string path, string json, string contentType = "application/json", string? accept = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new ByteArrayContent(Encoding.UTF8.GetBytes(json)) };
        request.Content.Headers.ContentType = MediaTypeHeaderValue.Parse(contentType);
        if (accept is not null)
        {
            request.Headers.TryAddWithoutValidation("Accept", accept);
        }

        return await Reply.OfAsync(await Client.SendAsync(request));
    }

    public async Task<Reply> PostAsync(string path, JsonNode json) => await PostAsync(path, json.ToJsonString());

    public async Task<Reply> GetAsync(string path) => await Reply.OfAsync(await Client.GetAsync(path));
}
