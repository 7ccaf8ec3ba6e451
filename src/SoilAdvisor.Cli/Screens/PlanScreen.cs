using System.Text.Json;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>A plan on the terminal: what the soil tests mean, every bed, what to get, what to mind, where the numbers come from.</summary>
internal static class PlanScreen
{
    public static void Draw(IAnsiConsole screen, JsonElement plan, Places places)
    {
        var beds = plan.Each("beds").ToList();
        Head(screen, plan, beds);
        foreach (var tested in beds.Where(b => b.Each("ratings").Any()).DistinctBy(b => b.Text("soilTest")))
        {
            screen.Heading($"Soil test \"{tested.Text("soilTest")}\"");
            screen.Write(RatingScreen.Ratings(tested.Each("ratings")));
        }

        foreach (var bed in beds)
        {
            BedScreen.Draw(screen, bed, places);
        }

        Farm(screen, plan, beds);
        screen.Foot([plan, .. beds]);
    }

    private static void Head(IAnsiConsole screen, JsonElement plan, List<JsonElement> beds)
    {
        var guide = plan.At("guide");
        screen.Heading(plan.Text("farm") is { } farm ? $"Soil plan: {farm}" : "Soil plan");
        screen.Paragraph($"Made for {plan.Text("date")}. {beds.Count} {(beds.Count == 1 ? "bed" : "beds")}: {States(beds)}.");
        screen.Paragraph($"Guide: {guide.Text("title")}, {guide.Text("institution")} [{Sheets.Cited(guide)}]. {plan.Text("guideReason")}");
        screen.Paragraph(plan.Text("rateTable") is { } table
            ? $"Rates: {table}, read with that guide's limits."
            : "Rates: no rate table may be read with this guide's limits, so phosphate and potash needs are refused.");
        screen.Paragraph($"How materials were chosen: {plan.Text("objective")}");
    }

    private static string States(List<JsonElement> beds) => string.Join(", ", beds
        .GroupBy(b => b.Text("state"))
        .OrderByDescending(g => g.Count())
        .Select(g => $"{g.Count()} {StateOf(g.Key)}"));

    private static string? StateOf(string? state) => state switch
    {
        "planned" => "planned whole",
        "partly" => "planned in part",
        "refused" => "not planned",
        _ => state,
    };

    private static void Farm(IAnsiConsole screen, JsonElement plan, List<JsonElement> beds)
    {
        var totals = plan.At("totals");
        screen.Heading("For all beds");
        if (plan.Each("purchases").Any())
        {
            var table = Sheets.Table("material", "needed", "on hand", "to buy", "cost of what is needed");
            foreach (var purchase in plan.Each("purchases"))
            {
                table.Row(
                    purchase.Text("name"),
                    Figures.Weight(purchase.At("needed")),
                    Figures.Weight(purchase.At("onHand")),
                    Figures.Weight(purchase.At("toBuy")),
                    purchase.Has("cost") ? Figures.Money(purchase.At("cost")) : "no price given");
            }

            screen.Write(table);
        }

        if (totals.Has("cost"))
        {
            screen.Paragraph($"Cost of everything that has a price: {Figures.Money(totals.At("cost"))}.");
        }

        if (totals.Text("partial") == "yes")
        {
            screen.Paragraph("The totals are not whole: a bed, or a part of one, could not be planned.");
        }

        screen.List(plan.Each("findings").Select(BedScreen.Finding));
        screen.List(plan.Each("warnings").Select(w => w.AsText()));
        Cautions(screen, beds);
    }

    // A caution is printed once, however many beds it concerns.
    private static void Cautions(IAnsiConsole screen, List<JsonElement> beds)
    {
        var cautions = beds.SelectMany(b => b.Each("cautions")).DistinctBy(c => c.Text("id")).ToList();
        if (cautions.Count == 0)
        {
            return;
        }

        screen.Heading("Before you spread");
        screen.List(cautions.Select(c => $"{c.Text("text")} [{Sheets.CitedShort(c)}]"));
    }
}
