using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Has a lab file read by the service, which knows what laboratories write.</summary>
internal static class LabReport
{
    /// <summary>The soil tests of the file; null when it cannot be used, which has then been said.</summary>
    /// <param name="file">The file.</param>
    /// <param name="errand">The run.</param>
    /// <param name="connection">The service.</param>
    /// <param name="stop">Gives up.</param>
    public static async Task<(JsonArray? SoilTests, int ExitCode)> Read(InputFile file, Errand errand, Connection connection, CancellationToken stop)
    {
        // What the service says about a lab file names lines and columns already; only the file is missing.
        errand.Places.NoteFile(file.Name);
        var reply = await connection.Ask(HttpMethod.Post, "v1/lab-files", file.Content, file.MediaType, "application/json", stop);
        if (!reply.IsDone)
        {
            return (null, errand.Refused(reply));
        }

        var read = JsonNode.Parse(reply.Body)!.AsObject();
        errand.Complaints.AddRange(reply.Json().Each("errors").Select(e => Reply.ComplaintOf(e, errand.Places)));
        if (errand.Complaints.Count > 0)
        {
            return (null, errand.BadInput());
        }

        errand.Places.NoteFile(null);
        var soilTests = read["soilTests"]!.DeepClone().AsArray();
        for (var i = 0; i < soilTests.Count; i++)
        {
            errand.Places.Note($"/soilTests/{i}", $"{file.Name}, sample \"{(string?)soilTests[i]?["id"]}\"");
        }

        return (soilTests, ExitCode.Done);
    }
}
