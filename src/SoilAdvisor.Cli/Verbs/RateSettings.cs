using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb rate takes.</summary>
internal sealed class RateSettings : CalculationSettings
{
    [CommandArgument(0, "<LABFILE>")]
    [Description("What the laboratory reported: CSV or JSON (docs/lab-file.md).")]
    public string LabFile { get; init; } = "";

    [CommandOption("--crop <CROP>")]
    [Description("Crop, for guides that rate it by its own limits and for a nitrate test. \"soil show crops\" lists them.")]
    public string? Crop { get; init; }

    [CommandOption("--manured <YESNO>")]
    [Description("Whether the soil was manured for this crop, yes or no. A nitrate test before sidedressing asks for it.")]
    public string? Manured { get; init; }

    [CommandOption("--beside <GUIDES>")]
    [Description("Guides to set beside it, with commas between: what the neighbouring state would say. The word all takes every guide with limits for the same extractant.")]
    public string? Beside { get; init; }

    [CommandOption("--convert <CONVERSIONS>")]
    [Description("Published conversions to another method, by name, with commas between. An estimate beside the measured reading; nothing is converted unasked.")]
    public string? Convert { get; init; }

    [CommandOption("--subregion <PART>")]
    [Description("Part of the guide's region, where its limits depend on it, for example \"Coastal Plain\".")]
    public string? Subregion { get; init; }

    /// <inheritdoc />
    public override ValidationResult Validate() => Manured is null or "yes" or "no"
        ? base.Validate()
        : ValidationResult.Error($"--manured is \"{Manured}\". Use yes or no.");
}
