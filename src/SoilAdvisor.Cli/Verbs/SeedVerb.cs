using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Seed of a cover crop or a mixture.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class SeedVerb(Screen screen) : ServiceVerb<SeedSettings, JsonObject>(screen)
{
    /// <inheritdoc />
    protected override JsonObject Read(SeedSettings settings, Errand errand)
    {
        errand.Places.Note("/area", "--area");
        errand.Places.Note("/sowing", "--sow");
        var species = settings.Species.Select((s, i) => Species(s, i, settings, errand)).ToArray<JsonNode>();
        foreach (var tag in settings.Tags.Where(t => !settings.Species.Any(s => Split(s).Name == Split(t).Name)))
        {
            errand.Complaints.Add(new("--tag", $"\"{tag}\" names no species of this sowing.", "Write the same id before the equals sign, for example oats=98/90."));
        }

        return Members.Of(
            ("sowing", settings.Sow),
            ("area", settings.Area is { } area ? new JsonObject { ["value"] = area, ["unit"] = "sq ft" } : null),
            ("species", new JsonArray(species)));
    }

    /// <inheritdoc />
    protected override async Task<int> Ask(SeedSettings settings, JsonObject input, Errand errand, Connection connection, CancellationToken stop)
    {
        var reply = await Errand.Post(connection, $"v1/cover-crops/seed{settings.Query}", input, "application/json", stop);
        if (!reply.IsDone)
        {
            return errand.Refused(reply, settings.Strict);
        }

        await (settings.ChosenFormat == "json"
            ? errand.Deliver(reply.Body, stop)
            : errand.Deliver(paper => SeedScreen.Draw(paper, reply.Json()), stop));
        return ExitCode.Done;
    }

    private static JsonObject Species(string typed, int place, SeedSettings settings, Errand errand)
    {
        var (name, share) = Split(typed);
        errand.Places.Note($"/species/{place}", typed);
        var tag = settings.Tags.Select(Split).Where(t => t.Name == name).Select(t => t.Value?.Split('/')).FirstOrDefault();
        if (tag is { Length: < 2 or > 3 })
        {
            errand.Complaints.Add(new("--tag", $"The tag of {name} does not hold two or three percentages.", "Write purity/germination or purity/germination/hard seed, for example oats=98/90."));
        }

        return Members.Of(("coverCrop", name), ("sharePercent", share), ("purity", tag?[0]), ("germination", tag?.ElementAtOrDefault(1)), ("hardSeed", tag?.ElementAtOrDefault(2)));
    }

    private static (string Name, string? Value) Split(string typed) =>
        typed.IndexOf('=', StringComparison.Ordinal) is > 0 and var at ? (typed[..at], typed[(at + 1)..]) : (typed, null);
}
