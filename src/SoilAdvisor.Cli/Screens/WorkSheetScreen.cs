using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Steps with blanks for a learner to fill in.</summary>
internal static class WorkSheetScreen
{
    public static void Draw(Paper paper, JsonElement answer)
    {
        foreach (var part in answer.Each("workSheet"))
        {
            if (part.Text("about") is { } about)
            {
                paper.Heading(about);
            }

            WorkingScreen.Draw(paper, part.Each("lines"));
        }
    }
}
