using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb rate takes.</summary>
internal sealed class RateSettings : CalculationSettings
{
    [CommandArgument(0, "<LABFILE>")]
    [Description("What the laboratory reported: CSV or JSON (docs/lab-file.md).")]
    public string LabFile { get; init; } = "";

    [CommandOption("--crop <CROP>")]
    [Description("Crop, for guides that rate it by its own limits. \"soil show crops\" lists them.")]
    public string? Crop { get; init; }

    [CommandOption("--subregion <PART>")]
    [Description("Part of the guide's region, where its limits depend on it, for example \"Coastal Plain\".")]
    public string? Subregion { get; init; }
}
