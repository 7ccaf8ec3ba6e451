using System.Net;
using System.Net.Http.Headers;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.Logging;
using SoilAdvisor.Api;

namespace SoilAdvisor.Cli.Connections;

/// <summary>A connection to the service: one that the user named, or one of its own that lives as long as the command.</summary>
internal sealed class Connection : IAsyncDisposable
{
    // Above the service's own limit for one request, so that its answer arrives before we give up.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly WebApplication? own;
    private readonly HttpClient client;

    private Connection(WebApplication? own, Uri address)
    {
        this.own = own;
        // A proxy of the surroundings must not stand between the command and its own service.
        client = new HttpClient(new SocketsHttpHandler { UseProxy = own is null, AllowAutoRedirect = false })
        {
            BaseAddress = address,
            Timeout = Patience,
        };
    }

    /// <summary>Connects to the named service, or starts one in this process.</summary>
    /// <param name="server">Address; null for a service of its own.</param>
    /// <param name="stop">Gives up.</param>
    public static async Task<Connection> Open(Uri? server, CancellationToken stop)
    {
        if (server is not null)
        {
            return new Connection(null, server);
        }

        // Content root and environment are named, so that neither the folder the user stands in nor the environment variables meant for a real server change anything.
        var service = Host.Build(["--contentRoot", AppContext.BaseDirectory, "--environment", "Production"], OnlyForThisProcess);
        await service.StartAsync(stop);
        return new Connection(service, new Uri(service.Urls.First()));
    }

    /// <summary>Asks for something.</summary>
    /// <param name="method">HTTP method.</param>
    /// <param name="path">Path and query.</param>
    /// <param name="body">Body; null for none.</param>
    /// <param name="bodyType">Media type of the body.</param>
    /// <param name="accept">Media type wanted.</param>
    /// <param name="stop">Gives up.</param>
    public async Task<Reply> Ask(HttpMethod method, string path, byte[]? body, string bodyType, string accept, CancellationToken stop)
    {
        using var request = new HttpRequestMessage(method, path);
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue(accept));
        if (body is not null)
        {
            request.Content = new ByteArrayContent(body);
            request.Content.Headers.ContentType = new MediaTypeHeaderValue(bodyType);
        }

        try
        {
            using var answer = await client.SendAsync(request, stop);
            return new Reply(answer.StatusCode, await answer.Content.ReadAsByteArrayAsync(stop));
        }
        catch (HttpRequestException fault)
        {
            throw new NoServiceException($"No answer from {client.BaseAddress}: {fault.Message}");
        }
        catch (TaskCanceledException) when (!stop.IsCancellationRequested)
        {
            throw new NoServiceException($"No answer from {client.BaseAddress} within {Patience.TotalSeconds:0} seconds.");
        }
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        if (own is not null)
        {
            await own.DisposeAsync();
        }
    }

    private static void OnlyForThisProcess(WebApplicationBuilder builder)
    {
        builder.Configuration.Sources.Clear();
        builder.Configuration.AddInMemoryCollection();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
    }
}
