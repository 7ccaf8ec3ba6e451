using System.Text.Json;
using SoilAdvisor.Agronomy.Ratings;

namespace SoilAdvisor.PublishedChecks;

/// <summary>Values on both sides of the limits of one scale of one guide, each with the class it belongs to, typed by hand.</summary>
/// <param name="Guide">Id of the guide.</param>
/// <param name="Name">What the scale rates and under which conditions.</param>
/// <param name="Evidence">What the rows rest on.</param>
/// <param name="Source">Publication in words.</param>
/// <param name="Locator">Table, page or section.</param>
/// <param name="Read">What was read when the rows were typed.</param>
/// <param name="Note">How shared and open ends are printed; null for none.</param>
/// <param name="Given">Unit, method and conditions of the values; or the id of the guide's index that they are values of.</param>
/// <param name="Rows">Value and class, in the order of the file.</param>
public sealed record LimitTable(
    string Guide,
    string Name,
    LimitEvidence Evidence,
    string Source,
    string Locator,
    string Read,
    string? Note,
    JsonElement Given,
    IReadOnlyList<LimitRow> Rows)
{
    /// <summary>Every table of the folder <c>limits</c>, by evidence, guide and order in the file.</summary>
    public static IReadOnlyList<LimitTable> All { get; } = [.. Enum.GetValues<LimitEvidence>().SelectMany(In)];

    /// <summary>Folder of a kind of evidence.</summary>
    /// <param name="evidence">The kind.</param>
    public static string FolderOf(LimitEvidence evidence) => evidence switch
    {
        LimitEvidence.Published => "published",
        LimitEvidence.FromMemory => "from-memory",
        LimitEvidence.Convention => "convention",
        _ => throw new ArgumentOutOfRangeException(nameof(evidence), evidence, null),
    };

    /// <summary>Rates every value by the guide in the reference tables: a reading by its method and conditions, an index on its own scale.</summary>
    public IReadOnlyList<RatedLimit> Rate()
    {
        var guide = TablesUnderTest.Current.Guides[Guide];
        if (Given.TryGetProperty("index", out var index))
        {
            var scale = guide.Indices.Single(i => i.Id == index.GetString()).Scales.Single();
            return [.. Rows.Select(row => new RatedLimit(this, row, scale, scale.IndexOf(row.Value, null), null, RatedLimit.Outside))];
        }

        var given = Given.Deserialize<PrintedReading>(PublishedExamples.Json) ?? throw new JsonException($"{this}: given is null.");
        return [.. Rows.Select(row => Rate(guide, given, row))];
    }

    /// <summary>Guide, scale and evidence.</summary>
    public override string ToString() => $"{Guide}, {Name} ({FolderOf(Evidence)})";

    private RatedLimit Rate(Guide guide, PrintedReading given, LimitRow row)
    {
        var (test, reading) = given.Test(row.Value);
        return guide.Rate(test, reading, given.Context()).TryGet(out var rating, out var reason)
            ? new RatedLimit(this, row, rating.Scale, rating.ClassIndex, rating.Cec, null)
            : new RatedLimit(this, row, null, -1, null, reason.Code == "outside-reference-range" ? RatedLimit.Outside : reason.Message);
    }

    private static IEnumerable<LimitTable> In(LimitEvidence evidence)
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "limits", FolderOf(evidence));
        return Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal).SelectMany(path => ReadFile(path, evidence));
    }

    private static IEnumerable<LimitTable> ReadFile(string path, LimitEvidence evidence)
    {
        LimitFile file;
        try
        {
            file = JsonSerializer.Deserialize<LimitFile>(File.ReadAllText(path), PublishedExamples.Json) ?? throw new JsonException("The file is empty.");
        }
        catch (JsonException fault)
        {
            throw new JsonException($"{path}: {fault.Message}", fault);
        }

        return file.Scales.Select(scale => new LimitTable(
            Path.GetFileNameWithoutExtension(path),
            scale.Name,
            evidence,
            scale.Source ?? file.Source,
            scale.Locator ?? file.Locator,
            scale.Read ?? file.Read,
            scale.Note ?? file.Note,
            scale.Given,
            [.. scale.Classes.SelectMany(c => c.Value.Select(value => new LimitRow(value, c.Key)))]));
    }

    private sealed record LimitFile(string Source, string Locator, string Read, LimitScale[] Scales, string? Note = null);

    private sealed record LimitScale(
        string Name,
        JsonElement Given,
        Dictionary<string, decimal[]> Classes,
        string? Source = null,
        string? Locator = null,
        string? Read = null,
        string? Note = null);
}
