using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb cover takes.</summary>
internal sealed class CoverSettings : CalculationSettings
{
    [CommandArgument(0, "<FROM>")]
    [Description("First free day of the bed, for example 2027-07-05.")]
    public string From { get; init; } = "";

    [CommandArgument(1, "<TO>")]
    [Description("Last free day of the bed, for example 2027-08-25.")]
    public string To { get; init; } = "";

    [CommandOption("--for <AIMS>")]
    [Description("What the cover crop is for, separated by commas: phosphorus, nitrogen, weeds, cover, compaction, pollinators.")]
    public string? For { get; init; }

    [CommandOption("--last-frost <DAY>")]
    [Description("Usual day of the last spring frost, for example 04-20.")]
    public string? LastFrost { get; init; }

    [CommandOption("--first-frost <DAY>")]
    [Description("Usual day of the first fall frost, for example 10-20.")]
    public string? FirstFrost { get; init; }

    [CommandOption("--after <CROP>")]
    [Description("Crop that stands before the gap.")]
    public string? After { get; init; }

    [CommandOption("--before <CROP>")]
    [Description("Crop that follows the gap.")]
    public string? Before { get; init; }

    [CommandOption("--area <SQUAREFEET>")]
    [Description("Ground to sow, in square feet, to see the seed for it.")]
    public string? Area { get; init; }
}
