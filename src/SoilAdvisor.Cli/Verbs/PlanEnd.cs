using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>How a finished plan ends: with what blocks it, said on standard error, and the exit code that scripts read.</summary>
internal static class PlanEnd
{
    /// <summary>Says what blocks the plan.</summary>
    public static int Say(JsonElement plan, Errand errand)
    {
        var blocking = Blocking(plan, errand).ToList();
        if (blocking.Count == 0)
        {
            return ExitCode.Done;
        }

        errand.Screen.Say("The plan is not ready to act on:");
        errand.Screen.SayEach(blocking);
        return ExitCode.Blocked;
    }

    private static IEnumerable<string> Blocking(JsonElement plan, Errand errand)
    {
        foreach (var finding in plan.Each("findings").Where(BedScreen.Blocks))
        {
            yield return finding.Text("message") ?? "";
        }

        foreach (var bed in plan.Each("beds"))
        {
            var name = bed.Text("bed");
            if (bed.Text("state") == "refused")
            {
                yield return $"Bed {name} was refused.";
                foreach (var refused in bed.Each("refused"))
                {
                    var complaint = Reply.ComplaintOf(refused, errand.Places);
                    yield return $"  {complaint.Where}: {complaint.Message} {complaint.Suggestion}".TrimEnd();
                }
            }

            foreach (var finding in bed.Each("findings").Where(BedScreen.Blocks))
            {
                yield return $"Bed {name}: {finding.Text("message")}";
            }

            foreach (var shortfall in bed.Each("shortfalls"))
            {
                yield return $"Bed {name}: {BedScreen.Shortfall(shortfall)}";
            }
        }
    }
}
