using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb work takes.</summary>
internal sealed class WorkSettings : ServiceSettings
{
    [CommandArgument(0, "<FORMULA>")]
    [Description("Formula. \"soil show formulas\" lists them, \"soil show formulas NAME\" names its numbers.")]
    public string Formula { get; init; } = "";

    [CommandOption("--with <NUMBER>")]
    [Description("A number the formula needs, as symbol=value. Repeat it for each.")]
    public string[] With { get; init; } = [];
}
