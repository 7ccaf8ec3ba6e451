using System.Collections.Concurrent;
using System.Text.Json;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>Lists that change only with the tables: written once, on first use, and kept as bytes.</summary>
internal sealed class CatalogueStore(Tables tables)
{
    private readonly ConcurrentDictionary<string, byte[]> kept = new(StringComparer.Ordinal);

    /// <summary>Changes with any table and any version of the calculation.</summary>
    public string ETag { get; } = $"\"{Product.ApiVersion}-{Product.EngineVersion}-{tables.VersionId}\"";

    /// <summary>A whole list.</summary>
    public byte[] List<T>(string path, Func<Bibliography, IEnumerable<T>> write) => kept.GetOrAdd(path, _ =>
    {
        var bibliography = new Bibliography(tables);
        IReadOnlyList<T> items = [.. write(bibliography)];
        var answer = new CatalogueAnswer<T>(items, [], bibliography.List(), Product.Versions(tables));
        return JsonSerializer.SerializeToUtf8Bytes(answer, ApiJson.TypeOf<CatalogueAnswer<T>>());
    });

    /// <summary>One entry.</summary>
    public byte[] Entry<T>(Func<Bibliography, T> write)
    {
        var bibliography = new Bibliography(tables);
        var item = write(bibliography);
        return JsonSerializer.SerializeToUtf8Bytes(new EntryAnswer<T>(item, [], bibliography.List(), Product.Versions(tables)), ApiJson.TypeOf<EntryAnswer<T>>());
    }
}
