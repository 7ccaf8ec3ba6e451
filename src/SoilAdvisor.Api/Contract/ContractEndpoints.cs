using System.Net;
using System.Text;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.OpenApi;
using SoilAdvisor.Api.Http;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Contract;

/// <summary>The contract as a document, as a page, and whether the service is well.</summary>
internal static class ContractEndpoints
{
    public static void AddContract(this IServiceCollection services)
    {
        services.ConfigureHttpJsonOptions(json =>
        {
            json.SerializerOptions.PropertyNamingPolicy = ApiJson.Shared.PropertyNamingPolicy;
            json.SerializerOptions.DefaultIgnoreCondition = ApiJson.Shared.DefaultIgnoreCondition;
            json.SerializerOptions.TypeInfoResolver = WireTypes.Default;
        });
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(options =>
        {
            options.SwaggerDoc(Product.ApiVersion, new OpenApiInfo
            {
                Title = Product.Name,
                Version = Product.ApiVersion,
                Description = "From a soil test to a rate for each bed: ratings, lime, materials and cover crops, each number with its source. Every address is stateless.",
            });
            options.MapType<WrittenNumber>(() => new OpenApiSchema { Type = JsonSchemaType.Number });
            options.CustomSchemaIds(SchemaNames.Of);
            options.SupportNonNullableReferenceTypes();
            options.OperationFilter<OptionsOfCalculations>();
        });
    }

    public static void MapContract(this WebApplication app)
    {
        app.MapSwagger("/openapi/{documentName}.json", options => options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1);
        app.MapGet("/health", (Tables tables) => TypedResults.Json(new HealthAnswer("ok", Product.Versions(tables)), ApiJson.TypeOf<HealthAnswer>()))
            .WithTags("Service").WithName("Health").WithSummary("Whether the service is well, and its versions")
            .Produces<HealthAnswer>();
        app.MapGet("/docs", (EndpointDataSource endpoints) => TypedResults.Content(Page(endpoints), "text/html", Encoding.UTF8))
            .ExcludeFromDescription();
        app.MapGet("/", () => TypedResults.Redirect("/docs")).ExcludeFromDescription();
    }

    private static string Page(EndpointDataSource endpoints)
    {
        var page = new StringBuilder();
        page.Append("<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>").Append(Product.Name).Append(" API</title>")
            .Append("<style>body{font:1rem/1.5 serif;max-width:60rem;margin:2rem auto;padding:0 1rem}td{padding:.2rem 1rem .2rem 0;vertical-align:top}code{white-space:nowrap}</style>")
            .Append("</head><body><h1>").Append(Product.Name).Append(" API</h1><p>Every address, with what it answers. The whole contract: <a href=\"/openapi/v1.json\">/openapi/v1.json</a> (OpenAPI 3.1).</p><table>");
        foreach (var (method, path, summary) in Operations(endpoints))
        {
            page.Append("<tr><td><code>").Append(method).Append(' ').Append(WebUtility.HtmlEncode(path)).Append("</code></td><td>").Append(WebUtility.HtmlEncode(summary)).Append("</td></tr>");
        }

        return page.Append("</table></body></html>").ToString();
    }

    private static IEnumerable<(string Method, string Path, string Summary)> Operations(EndpointDataSource endpoints) =>
        from endpoint in endpoints.Endpoints.OfType<RouteEndpoint>()
        let summary = endpoint.Metadata.GetMetadata<IEndpointSummaryMetadata>()?.Summary
        where summary is not null
        from method in endpoint.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods ?? []
        let path = endpoint.RoutePattern.RawText ?? "/"
        orderby path, method
        select (method, path, summary);
}
