using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>The lime of one sample on the terminal.</summary>
internal static class LimeScreen
{
    public static void Draw(Paper paper, string sample, JsonElement answer)
    {
        var requirement = answer.At("requirement");
        paper.Heading($"Lime for soil test \"{sample}\"");
        if (requirement.ValueKind == JsonValueKind.Object)
        {
            paper.Paragraph(Requirement(paper, requirement));
        }

        paper.Put(
            ["material", "lb/acre", "on this area", "measure", "cost"],
            [.. answer.Each("choices").Select(choice => (string?[])
            [
                choice.Text("name"),
                Figures.Number(choice.At("rate").At("perAcre")),
                Figures.Weight(choice.At("perBed")),
                choice.Has("perBed") ? Figures.Measure(choice.At("volume")) : null,
                Figures.Money(choice.At("cost")),
            ])],
            firstIsWhole: false);
        paper.List(answer.Each("choices").Select(Reasons));
        paper.List(answer.Each("warnings").Select(w => w.AsText()));
        paper.Refused(answer.Each("refused"));
        if (answer.Each("working").Any())
        {
            paper.Heading($"Working: lime of \"{sample}\"");
            WorkingScreen.Draw(paper, answer.Each("working"));
        }
    }

    /// <summary>How much lime, from what and by which method, or why none.</summary>
    public static string Requirement(Paper paper, JsonElement requirement)
    {
        var from = $"pH {requirement.Text("soilPh")}, target {requirement.Text("targetPh")}{(requirement.Text("targetCrop") is { } crop ? $" for {crop}" : "")}";
        return Figures.IsZero(requirement)
            ? $"Lime: none. {from} [{paper.CitedShort(requirement)}]."
            : $"Lime: {Figures.Amount(requirement)} of {requirement.Text("basis")}, mixed {Figures.Amount(requirement.At("depth"))} deep. {from}, by {requirement.Text("method")} [{paper.Cited(requirement)}].";
    }

    private static string Reasons(JsonElement choice)
    {
        var doses = choice.Each("doses").Count();
        var spread = doses > 1 ? $"spread in {doses} doses. " : "";
        return $"{choice.Text("name")}: {spread}{string.Join(" ", choice.Each("reasons").Select(r => r.AsText()))}";
    }
}
