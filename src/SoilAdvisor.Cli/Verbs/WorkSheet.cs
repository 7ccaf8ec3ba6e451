using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Steps with blanks in place of a result.</summary>
internal static class WorkSheet
{
    /// <summary>Asks for the work sheet and delivers it.</summary>
    /// <param name="path">Address with its query.</param>
    /// <param name="request">The request.</param>
    /// <param name="settings">Format and output.</param>
    /// <param name="errand">The run.</param>
    /// <param name="connection">The service.</param>
    /// <param name="stop">Stops it.</param>
    public static async Task<int> Ask(string path, JsonNode request, ServiceSettings settings, Errand errand, Connection connection, CancellationToken stop)
    {
        var reply = await Errand.Post(connection, path, request, settings.MediaType, stop);
        if (!reply.IsDone)
        {
            return errand.Refused(reply);
        }

        await (settings.ChosenFormat == "table"
            ? errand.Deliver(
                paper =>
                {
                    WorkSheetScreen.Draw(paper, reply.Json());
                    paper.Foot(reply.Json());
                },
                stop)
            : errand.Deliver(reply.Body, stop));
        return ExitCode.Done;
    }
}
