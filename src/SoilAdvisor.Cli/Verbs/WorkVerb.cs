using System.Text.Json;
using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Works one formula with the numbers of whoever teaches it.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class WorkVerb(Screen screen) : ServiceVerb<WorkSettings, JsonObject>(screen)
{
    /// <inheritdoc />
    protected override JsonObject Read(WorkSettings settings, Errand errand)
    {
        var inputs = new JsonObject();
        foreach (var pair in settings.With)
        {
            var sign = pair.IndexOf('=', StringComparison.Ordinal);
            var symbol = sign > 0 ? pair[..sign].Trim() : "";
            if (symbol.Length == 0)
            {
                errand.Complaints.Add(new("--with", $"\"{pair}\" is not a symbol with a value.", "Write for example --with pH=5.6"));
            }
            else if (!inputs.TryAdd(symbol, pair[(sign + 1)..].Trim()))
            {
                errand.Complaints.Add(new("--with", $"\"{symbol}\" is given twice.", "Leave one of them out."));
            }
            else
            {
                errand.Places.Note($"/inputs/{symbol}", $"--with {pair}");
            }
        }

        errand.Places.Note("/inputs", "--with");
        errand.Places.Note("", settings.Formula);
        return new JsonObject { ["inputs"] = inputs };
    }

    /// <inheritdoc />
    protected override async Task<int> Ask(WorkSettings settings, JsonObject input, Errand errand, Connection connection, CancellationToken stop)
    {
        var reply = await Errand.Post(connection, $"v1/formulas/{Uri.EscapeDataString(settings.Formula)}", input, "application/json", stop);
        if (!reply.IsDone)
        {
            return errand.Refused(reply);
        }

        await (settings.ChosenFormat == "json"
            ? errand.Deliver(reply.Body, stop)
            : errand.Deliver(paper => Draw(paper, reply.Json()), stop));
        return ExitCode.Done;
    }

    private static void Draw(Paper paper, JsonElement answer)
    {
        WorkingScreen.Draw(paper, answer.Each("working"));
        paper.Foot(answer);
    }
}
