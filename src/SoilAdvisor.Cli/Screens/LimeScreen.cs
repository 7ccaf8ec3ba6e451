using System.Text.Json;
using SoilAdvisor.Cli.Connections;

namespace SoilAdvisor.Cli.Screens;

/// <summary>The lime of one sample on the terminal, or how to lower its pH.</summary>
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

        Compare(paper, answer);
        Stones(paper, answer);
        if (answer.Has("timing"))
        {
            paper.Paragraph($"{answer.At("timing").Text("text")} [{paper.CitedShort(answer.At("timing"))}]");
        }

        SulfurScreen.Draw(paper, answer.At("sulfur"));
        paper.List(answer.Each("cautions").Select(c => $"Take care: {c.Text("text")}"));
        paper.List(answer.Each("excluded").Select(e => $"Not {e.Text("name")}: {e.Text("reason")}{string.Concat(e.Each("cautions").Take(1).Select(c => " " + c.AsText()))}"));
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
            : $"Lime: {Figures.Amount(requirement)} of {requirement.Text("basis")}, mixed {Figures.Amount(requirement.At("depth"))} deep. {from}, by {requirement.Text("method")}{Region(requirement)} [{paper.Cited(requirement)}].";
    }

    private static void Compare(Paper paper, JsonElement answer)
    {
        paper.Put(
            ["method", "region", "prints", "lb/acre CaCO3", "depth, in"],
            [.. answer.Each("comparison").Select(method => (string?[])
            [
                method.Text("method"),
                string.Join(", ", method.Each("region").Select(r => r.AsText())),
                method.Has("requirement") ? $"{Figures.Amount(method.At("requirement"))} of {method.Text("basis")}" : method.At("refused").Text("message"),
                method.Has("requirement") ? Figures.Number(method.At("requirement").At("calciumCarbonate").At("perAcre")) : null,
                method.Has("requirement") ? Figures.Number(method.At("requirement").At("depth")) : null,
            ])]);
        if (answer.Has("spread"))
        {
            paper.Paragraph($"{answer.At("spread").Text("text")} [{paper.CitedShort(answer.At("spread"))}]");
        }
    }

    private static void Stones(Paper paper, JsonElement answer)
    {
        paper.Put(
            ["material", "lb/acre", "on this area", "measure", "doses", "cost", "a ton of lime"],
            [.. answer.Each("choices").Select(choice => (string?[])
            [
                choice.Text("name"),
                Figures.Number(choice.At("rate").At("perAcre")),
                Figures.Weight(choice.At("perBed")),
                choice.Has("perBed") ? Figures.Measure(choice.At("volume")) : null,
                Doses(choice),
                Figures.Money(choice.At("cost")),
                Figures.Money(choice.At("costPerTonOfLime")),
            ])],
            firstIsWhole: false);
        paper.List(answer.Each("choices").Select(c => $"{c.Text("name")}: {string.Join(" ", c.Each("reasons").Select(r => r.AsText()))}{Supplied(c)}"));
    }

    private static string Doses(JsonElement choice)
    {
        var doses = choice.Each("doses").ToList();
        return doses.Count == 1 && !doses[0].Has("date")
            ? "one"
            : string.Join("; ", doses.Select(d => $"{(d.Has("perBed") ? Figures.Weight(d.At("perBed")) : $"{Figures.Amount(d)}")}{When(d)}"));
    }

    private static string When(JsonElement dose) => dose.Text("date") is { } day
        ? $" from {day}"
        : dose.Text("monthsFrom") is { } months ? (months == "0" ? " first" : $" after {months}{(dose.Text("monthsTo") is { } to && to != months ? $" to {to}" : "")} months") : " after a new test";

    private static string Supplied(JsonElement choice)
    {
        var supplied = choice.Each("supplied").Where(s => s.Text("nutrient") is not "CaCO3").Select(s => $"{Figures.Number(s.At("rate").At("perAcre"))} lb/acre {s.Text("nutrient")}").ToList();
        return supplied.Count > 0 ? $" Brings {string.Join(", ", supplied)}." : "";
    }

    private static string Region(JsonElement requirement)
    {
        var regions = requirement.Each("region").Select(r => r.AsText()).ToList();
        return regions.Count > 0 ? $" ({string.Join(", ", regions)})" : "";
    }
}
