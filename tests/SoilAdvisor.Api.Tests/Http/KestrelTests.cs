using System.Net.Sockets;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace SoilAdvisor.Api.Tests.Http;

/// <summary>Limits that only a real server enforces.</summary>
public sealed class KestrelTests : IAsyncLifetime
{
    private const int BodyLimit = 1_048_576;

    private readonly WebApplication app = SoilAdvisor.Api.Host.Build(
        ["--urls", "http://127.0.0.1:0", "--Limits:RequestSeconds", "1.5"],
        builder => builder.Logging.ClearProviders());

    private Uri Address => new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single());

    public Task InitializeAsync() => app.StartAsync();

    public async Task DisposeAsync() => await app.DisposeAsync();

    [Fact]
    public async Task Ten_megabytes_are_refused_with_the_limit()
    {
        using var client = new HttpClient { BaseAddress = Address };
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/plans") { Content = Json(10 * BodyLimit) };
        request.Headers.ExpectContinue = true;
        var reply = await Reply.OfAsync(await client.SendAsync(request));

        AssertTooLarge(reply);
    }

    [Fact]
    public async Task A_body_of_unknown_length_is_counted_while_it_comes()
    {
        using var client = new HttpClient { BaseAddress = Address };
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/plans") { Content = Json(BodyLimit + 1) };
        request.Headers.TransferEncodingChunked = true;
        var reply = await Reply.OfAsync(await client.SendAsync(request));

        AssertTooLarge(reply);
    }

    [Theory]
    [InlineData(BodyLimit, "malformed-json")]
    [InlineData(BodyLimit + 1, "body-too-large")]
    public async Task The_limit_itself_is_read_and_one_byte_more_is_not(int bytes, string code)
    {
        using var client = new HttpClient { BaseAddress = Address };
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/plans") { Content = Json(bytes) };
        request.Headers.ExpectContinue = true;
        var reply = await Reply.OfAsync(await client.SendAsync(request));

        Assert.Equal(code, Assert.Single(reply.Errors).Code);
    }

    [Fact]
    public async Task A_body_that_never_ends_is_given_up_with_the_limit()
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, Address.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes("POST /v1/ratings HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 100\r\n\r\n{"));
        using var reader = new StreamReader(stream);
        var head = await reader.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(60));
        var rest = await reader.ReadLinesUntilAsync("time-limit");

        Assert.Equal("HTTP/1.1 503 Service Unavailable", head);
        Assert.Contains("\"code\":\"time-limit\"", rest, StringComparison.Ordinal);
        Assert.Contains("1.5 seconds", rest, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_server_does_not_name_itself()
    {
        using var client = new HttpClient { BaseAddress = Address };

        Assert.False((await client.GetAsync("/health")).Headers.Contains("Server"));
    }

    [Fact]
    public async Task A_foreign_host_name_is_not_answered()
    {
        using var client = new HttpClient { BaseAddress = Address };
        using var request = new HttpRequestMessage(HttpMethod.Get, "/health");
        request.Headers.Host = "elsewhere.example";

        Assert.Equal(HttpStatusCode.BadRequest, (await client.SendAsync(request)).StatusCode);
    }

    [Fact]
    public async Task A_plan_is_answered_over_a_real_connection()
    {
        using var client = new HttpClient { BaseAddress = Address };
        using var content = new StringContent(Requests.Ratings().ToJsonString(), Encoding.UTF8, "application/json");

        Assert.Equal(HttpStatusCode.OK, (await client.PostAsync("/v1/ratings", content)).StatusCode);
    }

    private static void AssertTooLarge(Reply reply)
    {
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, reply.Status);
        Assert.Equal("application/problem+json", reply.MediaType);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal("body-too-large", fault.Code);
        Assert.Contains("1048576 bytes", fault.Message, StringComparison.Ordinal);
    }

    // Blanks around nothing: read to the end, then refused as JSON.
    private static ByteArrayContent Json(int bytes)
    {
        var body = new byte[bytes];
        Array.Fill(body, (byte)' ');
        var content = new ByteArrayContent(body);
        content.Headers.ContentType = new("application/json");
        return content;
    }
}
