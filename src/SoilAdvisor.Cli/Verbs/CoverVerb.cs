using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Cover crops for a gap.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class CoverVerb(Screen screen) : ServiceVerb<CoverSettings, JsonObject>(screen)
{
    /// <inheritdoc />
    protected override JsonObject Read(CoverSettings settings, Errand errand)
    {
        errand.Places.Note("/window", "The days of the gap");
        errand.Places.Note("/window/from", "FROM");
        errand.Places.Note("/window/to", "TO");
        errand.Places.Note("/aims", "--for");
        errand.Places.Note("/frost/lastSpring", "--last-frost");
        errand.Places.Note("/frost/firstFall", "--first-frost");
        errand.Places.Note("/lastCrop", "--after");
        errand.Places.Note("/nextCrop", "--before");
        errand.Places.Note("/area", "--area");
        errand.Places.Note("/guide", "--guide");
        errand.Places.Note("/region", "--region");
        var frost = Members.Of(("lastSpring", settings.LastFrost), ("firstFall", settings.FirstFrost));
        var aims = settings.For?.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? [];
        return Members.Of(
            ("window", new JsonObject { ["from"] = settings.From, ["to"] = settings.To }),
            ("aims", aims.Length > 0 ? new JsonArray([.. aims.Select(a => JsonValue.Create(a))]) : null),
            ("frost", frost.Count > 0 ? frost : null),
            ("guide", settings.Guide),
            ("region", settings.Region),
            ("lastCrop", settings.After),
            ("nextCrop", settings.Before),
            ("area", settings.Area is { } area ? new JsonObject { ["value"] = area, ["unit"] = "sq ft" } : null));
    }

    /// <inheritdoc />
    protected override async Task<int> Ask(CoverSettings settings, JsonObject input, Errand errand, Connection connection, CancellationToken stop)
    {
        if (settings.HideAnswers)
        {
            return await WorkSheet.Ask($"v1/cover-crops{settings.Query}", input, settings, errand, connection, stop);
        }

        var reply = await Errand.Post(connection, $"v1/cover-crops{settings.Query}", input, "application/json", stop);
        if (!reply.IsDone)
        {
            return errand.Refused(reply, settings.Strict);
        }

        await (settings.ChosenFormat == "json"
            ? errand.Deliver(reply.Body, stop)
            : errand.Deliver(paper => CoverScreen.Draw(paper, reply.Json()), stop));
        return ExitCode.Done;
    }
}
