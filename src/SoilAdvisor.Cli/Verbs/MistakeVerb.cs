using System.Text.Json;
using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Works a common mistake beside the right way.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class MistakeVerb(Screen screen) : ServiceVerb<MistakeSettings, JsonObject>(screen)
{
    /// <inheritdoc />
    protected override JsonObject Read(MistakeSettings settings, Errand errand)
    {
        errand.Places.Note("", settings.Mistake);
        return new JsonObject { ["inputs"] = NumbersGiven.Read(settings.With, errand) };
    }

    /// <inheritdoc />
    protected override async Task<int> Ask(MistakeSettings settings, JsonObject input, Errand errand, Connection connection, CancellationToken stop)
    {
        var path = $"v1/mistakes/{Uri.EscapeDataString(settings.Mistake)}";
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
            : errand.Deliver(paper => Draw(paper, reply.Json()), stop));
        return ExitCode.Done;
    }

    private static void Draw(Paper paper, JsonElement answer)
    {
        paper.Heading($"{answer.Text("title")}");
        paper.Paragraph(answer.Text("whatGoesWrong") ?? "");
        paper.Paragraph(answer.Text("howToNotice") ?? "");
        WorkingScreen.Draw(paper, answer.Each("working"));
        paper.Blank();
        var off = Figures.Amount(answer.At("difference"));
        var share = answer.Has("differencePercent") ? $" ({Figures.Share(answer.At("differencePercent")).TrimStart('-')} % of the right result)" : "";
        paper.Indented($"With the mistake the result is {off.TrimStart('-')} too {(off.StartsWith('-') ? "low" : "high")}{share}.", 4, strong: true);
        paper.Foot(answer);
    }
}
