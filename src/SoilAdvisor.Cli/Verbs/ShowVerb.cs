using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Lists a catalogue or shows one entry of it.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class ShowVerb(Screen screen) : ServiceVerb<ShowSettings, string>(screen)
{
    /// <inheritdoc />
    protected override string Read(ShowSettings settings, Errand errand)
    {
        errand.Places.Note("", settings.Id ?? settings.Catalogue);
        return settings.Id is { } id ? $"v1/{settings.Catalogue}/{Uri.EscapeDataString(id)}" : $"v1/{settings.Catalogue}";
    }

    /// <inheritdoc />
    protected override async Task<int> Ask(ShowSettings settings, string input, Errand errand, Connection connection, CancellationToken stop)
    {
        var reply = await Errand.Get(connection, input, stop);
        if (!reply.IsDone)
        {
            return errand.Refused(reply);
        }

        await (settings.ChosenFormat == "json"
            ? errand.Deliver(reply.Body, stop)
            : errand.Deliver(paper => CatalogueScreen.Draw(paper, reply.Json()), stop));
        return ExitCode.Done;
    }
}
