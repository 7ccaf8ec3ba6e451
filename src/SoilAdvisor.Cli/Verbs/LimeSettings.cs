using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb lime takes.</summary>
internal sealed class LimeSettings : CalculationSettings
{
    [CommandArgument(0, "<LABFILE>")]
    [Description("What the laboratory reported: CSV or JSON (docs/lab-file.md).")]
    public string LabFile { get; init; } = "";

    [CommandOption("--crop <CROP>")]
    [Description("Crop to lime for; its target pH is used. \"soil show crops\" lists them.")]
    public string? Crop { get; init; }

    [CommandOption("--target-ph <PH>")]
    [Description("Target pH, instead of that of a crop.")]
    public string? TargetPh { get; init; }

    [CommandOption("--method <METHOD>")]
    [Description("Published lime method. \"soil show lime-methods\" lists them.")]
    public string? Method { get; init; }

    [CommandOption("--compare <METHODS>")]
    [Description("Lime methods to see side by side, joined by commas, or all for each that is made for the laboratory's buffer.")]
    public string? Compare { get; init; }

    [CommandOption("--depth <INCHES>")]
    [Description("Depth that the lime is worked in, in inches; without it that of the method.")]
    public string? Depth { get; init; }

    [CommandOption("--surface")]
    [Description("The lime stays on the surface.")]
    public bool Surface { get; init; }

    [CommandOption("--date <DAY>")]
    [Description("Day of the first spreading, like 2026-10-15, to see the days of the later ones.")]
    public string? Date { get; init; }

    [CommandOption("--recent-lime <TONSPERACRE>")]
    [Description("Lime spread lately, in short tons to the acre, to take it off. Needs --recent-date.")]
    public string? RecentLime { get; init; }

    [CommandOption("--recent-date <DAY>")]
    [Description("Day of the last liming, like 2026-03-31.")]
    public string? RecentDate { get; init; }

    [CommandOption("--recent-material <MATERIAL>")]
    [Description("What was spread then; without it it counts as calcium carbonate equivalent.")]
    public string? RecentMaterial { get; init; }

    [CommandOption("--area <SQUAREFEET>")]
    [Description("Ground to lime, in square feet, to see amounts for it.")]
    public string? Area { get; init; }

    [CommandOption("--materials <FILE>")]
    [Description("The liming materials you can use, with their prices: CSV or JSON (docs/bed-list.md).")]
    public string? Materials { get; init; }
}
