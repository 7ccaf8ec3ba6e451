using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Beds;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Which cover crop to grow when on every bed.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class SeasonVerb(Screen screen) : ServiceVerb<SeasonSettings, JsonObject>(screen)
{
    /// <inheritdoc />
    protected override JsonObject Read(SeasonSettings settings, Errand errand)
    {
        var request = Request(settings, errand);
        Set("/farm", settings.Farm, "--farm");
        Set("/region", settings.Region, "--region");
        Set("/date", settings.Date, "--date");
        Set("/frost/lastSpring", settings.LastFrost, "--last-frost");
        Set("/frost/firstFall", settings.FirstFrost, "--first-frost");
        Set("/coverSeason/mostSpecies", settings.Species, "--species");
        Set("/coverSeason/familyGapMonths", settings.FamilyGap, "--family-gap");
        if (settings.For?.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 } aims)
        {
            errand.Places.Note("/aims", "--for");
            request["aims"] = new JsonArray([.. aims.Select(a => JsonValue.Create(a))]);
        }

        return request;

        void Set(string pointer, string? value, string option)
        {
            if (value is not null)
            {
                errand.Places.Note(pointer, option);
                Members.Set(request, pointer, value);
            }
        }
    }

    // A list of beds, or a whole request that holds one.
    private static JsonObject Request(SeasonSettings settings, Errand errand)
    {
        if (errand.Read(settings.Beds) is not { } file)
        {
            return [];
        }

        if (file.IsJson && JsonText.Read(file, errand.Complaints) is JsonObject whole && whole.ContainsKey("beds"))
        {
            errand.Places.NoteDocument("", file.Name);
            return whole;
        }

        return Members.Of(("beds", BedList.Read(file, errand.Places, errand.Complaints)));
    }

    /// <inheritdoc />
    protected override async Task<int> Ask(SeasonSettings settings, JsonObject input, Errand errand, Connection connection, CancellationToken stop)
    {
        var accept = settings.ChosenFormat == "ics" ? "text/calendar" : "application/json";
        var reply = await errand.Screen.During("Choosing cover crops", () => Errand.Post(connection, $"v1/cover-crops/season{settings.Query}", input, accept, stop));
        if (!reply.IsDone)
        {
            return errand.Refused(reply, settings.Strict);
        }

        await (settings.ChosenFormat == "table"
            ? errand.Deliver(paper => SeasonScreen.Draw(paper, reply.Json()), stop)
            : errand.Deliver(reply.Body, stop));
        return ExitCode.Done;
    }
}
