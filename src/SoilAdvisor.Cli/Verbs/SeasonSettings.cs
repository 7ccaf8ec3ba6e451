using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb season takes.</summary>
internal sealed class SeasonSettings : CalculationSettings
{
    [CommandArgument(0, "<BEDS>")]
    [Description("The beds with their gaps: CSV or JSON (docs/bed-list.md). Or a whole season request as JSON (docs/api.md).")]
    public string Beds { get; init; } = "";

    [CommandOption("--for <AIMS>")]
    [Description("What the cover crops are for, separated by commas: cover, weeds, nitrogen, phosphorus and others.")]
    public string? For { get; init; }

    [CommandOption("--last-frost <DAY>")]
    [Description("Usual day of the last spring frost, for example 2027-04-20.")]
    public string? LastFrost { get; init; }

    [CommandOption("--first-frost <DAY>")]
    [Description("Usual day of the first fall frost, for example 2027-10-20.")]
    public string? FirstFrost { get; init; }

    [CommandOption("--species <NUMBER>")]
    [Description("Most kinds of cover crop on the farm. Without it, no limit; each further kind still has to earn its place.")]
    public string? Species { get; init; }

    [CommandOption("--family-gap <MONTHS>")]
    [Description("Months between a cover crop and any crop of its family on the same bed. Without it, only a warning.")]
    public string? FamilyGap { get; init; }

    [CommandOption("--farm <NAME>")]
    [Description("Name of the farm; it keeps the events of two farms apart in one calendar.")]
    public string? Farm { get; init; }

    [CommandOption("--date <DATE>")]
    [Description("Day the season is planned on, for example 2027-03-01. Without it, today.")]
    public string? Date { get; init; }

    internal override IReadOnlyList<string> Formats => ["table", "ics", "json"];
}
