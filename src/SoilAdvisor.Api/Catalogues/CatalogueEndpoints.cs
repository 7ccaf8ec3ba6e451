using Microsoft.Net.Http.Headers;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>GET the lists that everything else refers to by id.</summary>
internal static class CatalogueEndpoints
{
    public static void MapCatalogues(this IEndpointRouteBuilder routes)
    {
        var limits = LimitNames.All(routes.ServiceProvider.GetRequiredService<Limits>());
        routes.MapCatalogue("guides", "guide", t => t.Guides.Values, t => t.Guide, EntryWriter.Write);
        routes.MapCatalogue("crops", "crop", t => t.Crops.Values, t => t.Crop, EntryWriter.Write);
        routes.MapCatalogue("materials", "material", t => t.Materials.Values, t => t.Material, EntryWriter.Write);
        routes.MapCatalogue("cover-crops", "cover crop", t => t.CoverCrops.Values, t => t.CoverCrop, EntryWriter.Write);
        routes.MapCatalogue("lime-methods", "lime method", t => t.LimeMethods.Values, t => t.LimeMethod, EntryWriter.Write);
        routes.MapCatalogue("method-conversions", "method conversion", t => t.MethodConversions.Values, t => t.MethodConversion, EntryWriter.Write);
        routes.MapCatalogue("rules", "rule", t => t.OrganicRules.Values, t => id => Find(t.OrganicRules, "rule", id), EntryWriter.Write);
        routes.MapCatalogue("sources", "source", t => t.Sources.Values, t => id => Find(t.Sources, "source", id), EntryWriter.Write);
        routes.MapCatalogue("limits", "limit", _ => limits, _ => id => Find(limits.ToDictionary(l => l.Id), "limit", id), (limit, _, bibliography) => limit.Entry(bibliography));
    }

    /// <summary>Maps a list and its entries.</summary>
    public static void MapCatalogue<TItem, TEntry>(
        this IEndpointRouteBuilder routes,
        string path,
        string word,
        Func<Tables, IEnumerable<TItem>> all,
        Func<Tables, Func<string, Answer<TItem>>> find,
        Func<TItem, Tables, Bibliography, TEntry> write)
    {
        var group = routes.MapGroup($"/v1/{path}").WithTags("Catalogues");
        group.MapGet("/", (HttpContext context, CatalogueStore store, Tables tables) =>
                Fresh(context, store, () => store.List(path, bibliography => all(tables).Select(item => write(item, tables, bibliography)))))
            .WithName($"List-{path}").WithSummary($"Every {word}")
            .Produces<CatalogueAnswer<TEntry>>().Produces(StatusCodes.Status304NotModified);
        group.MapGet("/{id}", (string id, HttpContext context, CatalogueStore store, Tables tables) =>
                find(tables)(id).TryGet(out var item, out var reason)
                    ? Fresh(context, store, () => store.Entry(bibliography => write(item, tables, bibliography)))
                    : Problem.Of(StatusCodes.Status404NotFound, [Fault.Of("id", reason)]).ToResult())
            .WithName($"Get-{path}").WithSummary($"One {word} by its id")
            .Produces<EntryAnswer<TEntry>>().Produces(StatusCodes.Status304NotModified).Produces<Problem>(StatusCodes.Status404NotFound, Problem.MediaType);
    }

    private static IResult Fresh(HttpContext context, CatalogueStore store, Func<byte[]> bytes)
    {
        context.Response.Headers.ETag = store.ETag;
        context.Response.Headers.CacheControl = "no-cache";
        return context.Request.GetTypedHeaders().IfNoneMatch.Any(tag => tag.Equals(EntityTagHeaderValue.Any) || tag.Compare(new EntityTagHeaderValue(store.ETag), false))
            ? TypedResults.StatusCode(StatusCodes.Status304NotModified)
            : TypedResults.Bytes(bytes(), "application/json; charset=utf-8");
    }

    private static Answer<T> Find<T>(IReadOnlyDictionary<string, T> rows, string word, string id)
        where T : class
    {
        if (rows.TryGetValue(id, out var row))
        {
            return Answer<T>.Given(row);
        }

        var near = NearestNames.Of(id, rows.Keys);
        return Answer<T>.Refused(
            $"unknown-{word}",
            $"\"{Rules.Clip(id)}\" is not a known {word}.",
            near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : $"The list of every {word} shows the known ones.");
    }
}
