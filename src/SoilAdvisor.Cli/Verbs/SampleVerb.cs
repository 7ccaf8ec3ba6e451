using System.Text;
using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>How many cores, and which results have really changed between two reports.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class SampleVerb(Screen screen) : ServiceVerb<SampleSettings, SampleVerb.Reports?>(screen)
{
    private const string Address = "v1/sampling";

    /// <inheritdoc />
    protected override Reports? Read(SampleSettings settings, Errand errand)
    {
        foreach (var option in new[] { "analyte", "extractant", "cv", "precision", "cores", "confidence" })
        {
            errand.Places.Note($"/{option}", $"--{option}");
        }

        return settings is { Before: { } before, After: { } after } && errand.Read(before) is { } one && errand.Read(after) is { } two ? new Reports(one, two) : null;
    }

    /// <inheritdoc />
    protected override async Task<int> Ask(SampleSettings settings, Reports? input, Errand errand, Connection connection, CancellationToken stop)
    {
        var answers = new List<(string? Sample, Reply Reply)>();
        if (settings.AsksForCores)
        {
            var reply = await Errand.Post(connection, Address + settings.Query, CoresQuestion(settings), "application/json", stop);
            if (!reply.IsDone)
            {
                return errand.Refused(reply);
            }

            answers.Add((null, reply));
        }

        IReadOnlyList<string> alone = [];
        if (input is not null)
        {
            var (exit, left) = await Compare(settings, input, errand, connection, answers, stop);
            if (exit != ExitCode.Done)
            {
                return exit;
            }

            alone = left;
        }

        await Deliver(settings, input, errand, answers, alone, stop);
        return ExitCode.Done;
    }

    private static async Task<(int ExitCode, IReadOnlyList<string> Alone)> Compare(
        SampleSettings settings, Reports reports, Errand errand, Connection connection, List<(string? Sample, Reply Reply)> answers, CancellationToken stop)
    {
        var (before, exit) = await LabReport.Read(reports.Before, errand, connection, stop);
        if (before is null)
        {
            return (exit, []);
        }

        (var after, exit) = await LabReport.Read(reports.After, errand, connection, stop);
        if (after is null)
        {
            return (exit, []);
        }

        var later = after.OfType<JsonObject>().ToDictionary(t => Id(t), StringComparer.Ordinal);
        var shared = before.OfType<JsonObject>().Where(t => later.ContainsKey(Id(t))).ToList();
        if (shared.Count == 0)
        {
            errand.Complaints.Add(new Complaint($"{reports.Before.Name} and {reports.After.Name}", "No sample stands in both files under the same id.", "Give a sample the same id in both files."));
            return (errand.BadInput(), []);
        }

        foreach (var test in shared)
        {
            Note(errand, reports, Id(test));
            var question = Members.Of(
                ("analyte", settings.Analyte),
                ("confidence", settings.Confidence),
                ("tests", new JsonArray(test.DeepClone(), later[Id(test)].DeepClone())));
            var reply = await Errand.Post(connection, Address + settings.Query, question, "application/json", stop);
            if (!reply.IsDone)
            {
                return (errand.Refused(reply), []);
            }

            answers.Add((Id(test), reply));
        }

        var ids = shared.Select(Id).ToHashSet(StringComparer.Ordinal);
        return (ExitCode.Done,
        [
            .. before.OfType<JsonObject>().Select(Id).Where(id => !ids.Contains(id)).Select(id => $"Only in {reports.Before.Name}: {id}."),
            .. later.Keys.Where(id => !ids.Contains(id)).Select(id => $"Only in {reports.After.Name}: {id}."),
        ]);
    }

    private static Task Deliver(
        SampleSettings settings, Reports? reports, Errand errand, List<(string? Sample, Reply Reply)> answers, IReadOnlyList<string> alone, CancellationToken stop)
    {
        if (settings.ChosenFormat == "json")
        {
            return errand.Deliver(Encoding.UTF8.GetBytes($"[{string.Join(",\n", answers.Select(a => Encoding.UTF8.GetString(a.Reply.Body)))}]\n"), stop);
        }

        return errand.Deliver(
            paper =>
            {
                foreach (var (sample, reply) in answers)
                {
                    if (sample is null)
                    {
                        SampleScreen.DrawCores(paper, reply.Json());
                    }
                    else
                    {
                        Note(errand, reports!, sample);
                        SampleScreen.DrawChanges(paper, sample, reply.Json());
                    }
                }

                paper.List(alone);
                SampleScreen.Foot(paper, [.. answers.Select(a => a.Reply.Json())]);
            },
            stop);
    }

    private static JsonObject CoresQuestion(SampleSettings settings) => Members.Of(
        ("analyte", settings.Analyte),
        ("extractant", settings.Extractant),
        ("cv", settings.Cv),
        ("precision", settings.Precision),
        ("confidence", settings.Confidence),
        ("cores", settings.Cores));

    private static void Note(Errand errand, Reports reports, string sample)
    {
        errand.Places.Note("/tests", $"sample \"{sample}\"");
        errand.Places.Note("/tests/0", $"{reports.Before.Name}, sample \"{sample}\"");
        errand.Places.Note("/tests/1", $"{reports.After.Name}, sample \"{sample}\"");
    }

    private static string Id(JsonObject test) => (string?)test["id"] ?? "";

    /// <summary>Two lab files of the same samples.</summary>
    /// <param name="Before">The earlier.</param>
    /// <param name="After">The later.</param>
    internal sealed record Reports(InputFile Before, InputFile After);
}
