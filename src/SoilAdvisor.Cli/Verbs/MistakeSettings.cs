using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb mistake takes.</summary>
internal sealed class MistakeSettings : ServiceSettings
{
    [CommandArgument(0, "<MISTAKE>")]
    [Description("The mistake. \"soil show mistakes\" lists them, \"soil show mistakes NAME\" names its numbers.")]
    public string Mistake { get; init; } = "";

    [CommandOption("--with <NUMBER>")]
    [Description("A number that both ways need, as symbol=value. Repeat it for each.")]
    public string[] With { get; init; } = [];

    [CommandOption("--hide-answers")]
    [Description("A work sheet: both lines with blanks to fill in.")]
    public bool HideAnswers { get; init; }

    internal override IReadOnlyList<string> Formats => HideAnswers ? ["table", "markdown", "html", "json"] : base.Formats;
}
