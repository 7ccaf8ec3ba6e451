using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Asks one question for every sample of a lab file.</summary>
internal static class Samples
{
    /// <summary>Asks, and delivers all answers or none. As JSON they are a list, each answer as the service wrote it.</summary>
    public static async Task<int> Each(
        InputFile file,
        CalculationSettings settings,
        string path,
        Func<JsonNode, JsonNode> question,
        Action<Paper, string, JsonElement> draw,
        Errand errand,
        Connection connection,
        CancellationToken stop)
    {
        var (soilTests, exit) = await LabReport.Read(file, errand, connection, stop);
        if (soilTests is null)
        {
            return exit;
        }

        foreach (var option in new[] { "guide", "region", "subregion", "crop", "manured", "beside", "method", "targetPh", "area", "depth", "date" })
        {
            errand.Places.Note($"/{option}", option == "targetPh" ? "--target-ph" : $"--{option}");
        }

        foreach (var (pointer, option) in new[] { ("/conversions", "--convert"), ("/methods", "--compare"), ("/recentLime/date", "--recent-date"), ("/recentLime/amount", "--recent-lime"), ("/recentLime/material", "--recent-material") })
        {
            errand.Places.Note(pointer, option);
        }

        var answers = new List<(string Sample, Reply Reply)>();
        foreach (var soilTest in soilTests.OfType<JsonObject>())
        {
            var sample = (string?)soilTest["id"] ?? "";
            errand.Places.Note("/soilTest", Place(file, sample));
            var reply = await Errand.Post(connection, path, question(soilTest.DeepClone()), "application/json", stop);
            if (!reply.IsDone)
            {
                return errand.Refused(reply, settings.Strict);
            }

            answers.Add((sample, reply));
        }

        if (settings.ChosenFormat == "json")
        {
            await errand.Deliver(Encoding.UTF8.GetBytes($"[{string.Join(",\n", answers.Select(a => Encoding.UTF8.GetString(a.Reply.Body)))}]\n"), stop);
        }
        else
        {
            await errand.Deliver(
                paper =>
                {
                    foreach (var (sample, reply) in answers)
                    {
                        errand.Places.Note("/soilTest", Place(file, sample));
                        if (settings.HideAnswers)
                        {
                            paper.Heading($"Sample {sample}");
                            WorkSheetScreen.Draw(paper, reply.Json());
                        }
                        else
                        {
                            draw(paper, sample, reply.Json());
                        }
                    }

                    paper.Foot([.. answers.Select(a => a.Reply.Json())]);
                },
                stop);
        }

        return ExitCode.Done;
    }

    private static string Place(InputFile file, string sample) => $"{file.Name}, sample \"{sample}\"";
}
