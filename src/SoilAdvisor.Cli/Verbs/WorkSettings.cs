using System.ComponentModel;
using Spectre.Console;
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

    [CommandOption("--vary <RANGE>")]
    [Description("One number from a first to a last value while the others stay, for example n=1.5..4.")]
    public string? Vary { get; init; }

    [CommandOption("--steps <NUMBER>")]
    [Description("How many values to vary over, both ends counted. Without it, 5.")]
    public string? Steps { get; init; }

    [CommandOption("--hide-answers")]
    [Description("A work sheet: the same line with blanks to fill in.")]
    public bool HideAnswers { get; init; }

    internal override IReadOnlyList<string> Formats => HideAnswers ? ["table", "markdown", "html", "json"] : base.Formats;

    /// <inheritdoc />
    public override ValidationResult Validate() => HideAnswers && Vary is not null
        ? ValidationResult.Error("--vary shows answers and --hide-answers hides them. Leave one of them out.")
        : Steps is not null && Vary is null
            ? ValidationResult.Error("--steps needs --vary, for example --vary n=1.5..4 --steps 6.")
            : base.Validate();
}
