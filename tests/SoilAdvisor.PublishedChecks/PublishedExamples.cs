using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace SoilAdvisor.PublishedChecks;

/// <summary>Reads the example files. A file states its publication once and holds one or more answers of it.</summary>
public static class PublishedExamples
{
    /// <summary>Options of every example file: unknown, missing and duplicate members are errors.</summary>
    public static JsonSerializerOptions Json { get; } = new(JsonSerializerOptions.Strict) 
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>All examples beside the test assembly, by topic, file and order in the file.</summary>
    public static IReadOnlyList<PublishedExample> All { get; } = In(Path.Combine(AppContext.BaseDirectory, "examples"));

    /// <summary>The examples of one topic, as theory rows.</summary>
    /// <param name="topic">Folder name.</param>
    public static TheoryData<PublishedExample> Of(string topic) => [.. All.Where(e => e.Topic == topic && e.Formula is null)];

    /// <summary>The examples that name a formula of the catalogue, as theory rows.</summary>
    public static TheoryData<PublishedExample> OfFormulas() => [.. All.Where(e => e.Formula is not null)];

    /// <summary>Reads every example file below a folder.</summary>
    /// <param name="folder">Folder with one folder a topic.</param>
    public static IReadOnlyList<PublishedExample> In(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*.json", SearchOption.AllDirectories).Order(StringComparer.Ordinal).SelectMany(Read)];

    private static IEnumerable<PublishedExample> Read(string path)
    {
        ExampleFile file;
        try
        {
            file = JsonSerializer.Deserialize<ExampleFile>(File.ReadAllText(path), Json) ?? throw new JsonException("The file is empty.");
        }
        catch (JsonException fault)
        {
            throw new JsonException($"{path}: {fault.Message}", fault);
        }

        var topic = Path.GetFileName(Path.GetDirectoryName(path))!;
        return file.Examples.Select(e => new PublishedExample(
            topic,
            Path.GetFileNameWithoutExtension(path),
            e.Name,
            file.Source,
            e.Locator ?? file.Locator,
            file.Read,
            file.Standing,
            e.Formula ?? file.Formula,
            Merge(file.GivenForAll, e.Given),
            e.Expected,
            e.PrintedDecimals ?? file.PrintedDecimals,
            e.Tolerance,
            e.ToleranceReason,
            e.Note ?? file.Note));
    }

    private static JsonElement Merge(JsonObject? forAll, JsonObject given)
    {
        if (forAll is null)
        {
            return JsonSerializer.SerializeToElement(given);
        }

        var merged = forAll.DeepClone().AsObject();
        foreach (var (name, value) in given)
        {
            merged[name] = value?.DeepClone();
        }

        return JsonSerializer.SerializeToElement(merged);
    }

    private sealed record ExampleFile(
        string Source,
        string Locator,
        string Read,
        string Standing,
        ExampleRow[] Examples,
        string? Formula = null,
        JsonObject? GivenForAll = null,
        int? PrintedDecimals = null,
        string? Note = null);

    private sealed record ExampleRow(
        string Name,
        JsonObject Given,
        JsonElement Expected,
        string? Locator = null,
        string? Formula = null,
        int? PrintedDecimals = null,
        double? Tolerance = null,
        string? ToleranceReason = null,
        string? Note = null);
}
