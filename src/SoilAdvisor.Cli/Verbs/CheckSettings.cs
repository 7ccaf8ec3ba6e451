using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb check takes.</summary>
internal sealed class CheckSettings : CommandSettings
{
    [CommandArgument(0, "[FOLDER]")]
    [Description("Folder of reference tables. Without it, the tables that the command itself uses.")]
    public string? Folder { get; init; }
}
