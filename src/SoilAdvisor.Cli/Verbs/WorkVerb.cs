using System.Text.Json;
using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Works one formula with the numbers of whoever teaches it.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class WorkVerb(Screen screen) : ServiceVerb<WorkSettings, JsonObject>(screen)
{
    /// <inheritdoc />
    protected override JsonObject Read(WorkSettings settings, Errand errand)
    {
        var inputs = NumbersGiven.Read(settings.With, errand);
        errand.Places.Note("", settings.Formula);
        foreach (var (pointer, option) in new[] { ("/vary/symbol", "--vary"), ("/vary/from", "--vary"), ("/vary/to", "--vary"), ("/vary/steps", "--steps") })
        {
            errand.Places.Note(pointer, option);
        }

        return Members.Of(("inputs", inputs), ("vary", Varied(settings, inputs, errand)));
    }

    /// <inheritdoc />
    protected override async Task<int> Ask(WorkSettings settings, JsonObject input, Errand errand, Connection connection, CancellationToken stop)
    {
        var path = $"v1/formulas/{Uri.EscapeDataString(settings.Formula)}";
        if (settings.HideAnswers)
        {
            return await WorkSheet.Ask($"{path}?answers=hidden", input, settings, errand, connection, stop);
        }

        var reply = await Errand.Post(connection, path, input, "application/json", stop);
        if (!reply.IsDone)
        {
            return errand.Refused(reply);
        }

        await (settings.ChosenFormat == "json"
            ? errand.Deliver(reply.Body, stop)
            : errand.Deliver(paper => Draw(paper, settings, reply.Json()), stop));
        return ExitCode.Done;
    }

    // A symbol that is only varied takes its first value on the board.
    private static JsonObject? Varied(WorkSettings settings, JsonObject inputs, Errand errand)
    {
        if (settings.Vary is null)
        {
            return null;
        }

        if (NumbersGiven.Split(settings.Vary) is not var (symbol, range) || range.Split("..") is not [var from, var to])
        {
            errand.Complaints.Add(new("--vary", $"\"{settings.Vary}\" is not a symbol with two ends.", "Write for example --vary n=1.5..4"));
            return null;
        }

        inputs.TryAdd(symbol, from);
        return Members.Of(("symbol", symbol), ("from", from), ("to", to), ("steps", settings.Steps));
    }

    private static void Draw(Paper paper, WorkSettings settings, JsonElement answer)
    {
        WorkingScreen.Draw(paper, answer.Each("working"));
        if (answer.Has("varied"))
        {
            var symbol = NumbersGiven.Split(settings.Vary ?? "")?.Symbol ?? "";
            var varied = answer.Each("working").First().Each("inputs").FirstOrDefault(i => i.Text("symbol") == symbol);
            var result = answer.At("result");
            paper.Blank();
            paper.Put(
                [$"{symbol} ({varied.Text("unit")})", $"{result.Text("symbol")} ({result.Text("unit")})", ""],
                [.. answer.Each("varied").Select(v => (IReadOnlyList<string?>)[v.Text("value"), v.Text("result"), v.Has("refused") ? v.At("refused").Text("message") : null])]);
        }

        paper.Foot(answer);
    }
}
