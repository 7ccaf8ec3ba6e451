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

    [CommandOption("--area <SQUAREFEET>")]
    [Description("Ground to lime, in square feet, to see amounts for it.")]
    public string? Area { get; init; }

    [CommandOption("--materials <FILE>")]
    [Description("The liming materials you can use, with their prices: CSV or JSON (docs/bed-list.md).")]
    public string? Materials { get; init; }
}
