using System.Text;
using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>One run of a verb: the files it read, what is wrong with them, and where its result goes.</summary>
/// <param name="screen">Where it writes.</param>
/// <param name="settings">What was asked.</param>
internal sealed class Errand(Screen screen, ServiceSettings settings)
{
    private readonly List<string> inputs = [];

    /// <summary>Where it writes.</summary>
    public Screen Screen => screen;

    /// <summary>What has to be corrected.</summary>
    public List<Complaint> Complaints { get; } = [];

    /// <summary>Where the parts of a request came from.</summary>
    public Places Places { get; } = new();

    /// <summary>Reads a file; null when it cannot be used.</summary>
    public InputFile? Read(string path)
    {
        inputs.Add(path);
        return InputFile.Read(path, Complaints);
    }

    /// <summary>Whether the result can be written where it was asked to go.</summary>
    public void CheckOutput()
    {
        if (settings.Output is { } path && OutputFile.Refusal(path, settings.Force, inputs) is { } refusal)
        {
            Complaints.Add(refusal);
        }
    }

    /// <summary>Asks the service for something.</summary>
    public static Task<Reply> Get(Connection connection, string path, CancellationToken stop) =>
        connection.Ask(HttpMethod.Get, path, null, "", "application/json", stop);

    /// <summary>Sends a request to the service.</summary>
    public static Task<Reply> Post(Connection connection, string path, JsonNode request, string accept, CancellationToken stop) =>
        connection.Ask(HttpMethod.Post, path, Encoding.UTF8.GetBytes(request.ToJsonString()), "application/json", accept, stop);

    /// <summary>Passes bytes on as they are.</summary>
    public async Task Deliver(ReadOnlyMemory<byte> content, CancellationToken stop)
    {
        if (settings.Output is { } path)
        {
            await OutputFile.Write(path, content, settings.Force, stop);
            screen.Say($"Wrote {path}.");
        }
        else
        {
            await Screen.Pass(content, stop);
        }
    }

    /// <summary>Draws on the screen, or writes the same as plain text to the file.</summary>
    public async Task Deliver(Action<Paper> draw, CancellationToken stop)
    {
        if (settings.Output is null)
        {
            draw(new Paper(screen.Results, Places));
        }
        else
        {
            await Deliver(Encoding.UTF8.GetBytes(Screen.Plain(console => draw(new Paper(console, Places)))), stop);
        }
    }

    /// <summary>Says what has to be corrected.</summary>
    public int BadInput()
    {
        screen.Say(Complaints.Count == 1 ? "One thing has to be corrected:" : $"{Complaints.Distinct().Count()} things have to be corrected:", Complaints);
        return ExitCode.BadInput;
    }

    /// <summary>Says why the service gave no result.</summary>
    /// <param name="reply">What it answered.</param>
    /// <param name="strict">Whether a refused part was to stop everything.</param>
    public int Refused(Reply reply, bool strict = false)
    {
        Complaints.AddRange(reply.Complaints(Places));
        switch ((int)reply.Status)
        {
            case >= 500:
                screen.Say("The service could not answer:", Complaints);
                return ExitCode.Unavailable;
            case 422 when strict:
                screen.Say("Refused, because --strict asks for all or nothing:", Complaints);
                return ExitCode.Blocked;
            default:
                return BadInput();
        }
    }
}
