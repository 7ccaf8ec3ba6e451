using FluentValidation;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Http.Timeouts;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Checks;
using SoilAdvisor.Api.Contract;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.CoverSeason;
using SoilAdvisor.Api.Formulas;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.LabFiles;
using SoilAdvisor.Api.Lime;
using SoilAdvisor.Api.Mistakes;
using SoilAdvisor.Api.Plans;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.Sampling;
using SoilAdvisor.Api.SeedRates;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api;

/// <summary>The service. Built by its own program, by the command, which starts it inside itself, and by tests.</summary>
public static class Host
{
    /// <summary>Makes the service, with its tables loaded and checked; it does not listen yet.</summary>
    /// <param name="args">Command line, for example --urls http://localhost:8080.</param>
    /// <param name="configure">Changes to the host before it is built, for example other logging; null for none.</param>
    /// <exception cref="ReferenceTableException">The tables hold faults; it carries all of them.</exception>
    /// <exception cref="DirectoryNotFoundException">No folder of tables was found.</exception>
    public static WebApplication Build(string[] args, Action<WebApplicationBuilder>? configure = null)
    {
        // Settings are read once. Watching them for changes would walk the whole tree below the folder that the service is started in.
        var builder = WebApplication.CreateBuilder(["--hostBuilder:reloadConfigOnChange=false", .. args]);
        configure?.Invoke(builder);
        var loading = Task.Run(() => Tables.Load(TablesFolder.Find(builder.Environment.ContentRootPath)));
        AddServices(builder, loading);

        var app = builder.Build();
        app.UseSecurityHeaders();
        app.UseProblems();
        app.UseRequestTimeouts();
        app.MapRatings();
        app.MapLabFiles();
        app.MapLime();
        app.MapPlans();
        app.MapCoverCrops();
        app.MapSeedRates();
        app.MapCoverSeason();
        app.MapChecks();
        app.MapSampling();
        app.MapFormulas();
        app.MapMistakes();
        app.MapCatalogues();
        app.MapContract();

        // Nothing is served before the tables are loaded and found without a fault.
        _ = loading.GetAwaiter().GetResult();
        return app;
    }

    private static void AddServices(WebApplicationBuilder builder, Task<Tables> loading)
    {
        var limits = builder.Configuration.GetSection("Limits").Get<Limits>() ?? new Limits();
        builder.Services.AddSingleton(_ => loading.GetAwaiter().GetResult());
        builder.Services.AddSingleton(limits);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton<CatalogueStore>();
        builder.Services.AddValidatorsFromAssembly(
            typeof(Host).Assembly,
            ServiceLifetime.Singleton,
            filter: found => found.ValidatorType.GetConstructor(Type.EmptyTypes) is not null,
            includeInternalTypes: true);
        builder.Services.AddProblems();
        builder.Services.AddContract();
        builder.Services.AddRequestTimeouts(options => options.DefaultPolicy = new RequestTimeoutPolicy
        {
            Timeout = limits.RequestTime,
            TimeoutStatusCode = StatusCodes.Status503ServiceUnavailable,
            WriteTimeoutResponse = context => Problems.TimedOut(limits).ToResult().ExecuteAsync(context),
        });
        builder.Services.PostConfigure<HostFilteringOptions>(options =>
        {
            // Without a configured list only this machine is answered, so that a foreign page cannot reach the service by another name.
            if (builder.Configuration["AllowedHosts"] is null)
            {
                options.AllowedHosts = ["localhost", "127.0.0.1", "[::1]"];
            }
        });
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = limits.BodyBytes;
            kestrel.Limits.RequestHeadersTimeout = limits.RequestTime;
        });
    }
}
