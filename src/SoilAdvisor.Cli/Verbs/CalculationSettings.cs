using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Options of every verb that calculates.</summary>
internal class CalculationSettings : ServiceSettings
{
    [CommandOption("--working")]
    [Description("Show the arithmetic step by step, with enough digits to follow it with a pocket calculator.")]
    public bool Working { get; init; }

    [CommandOption("--hide-answers")]
    [Description("A work sheet in place of the result: the arithmetic step by step, with blanks to fill in. --working shows the key.")]
    public bool HideAnswers { get; init; }

    [CommandOption("--units <UNITS>")]
    [Description("us (default) or metric: units of the result.")]
    public string Units { get; init; } = "us";

    [CommandOption("--strict")]
    [Description("Give no result at all when a part of it has to be refused.")]
    public bool Strict { get; init; }

    [CommandOption("--guide <GUIDE>")]
    [Description("Published guide to read the soil test by. \"soil show guides\" lists them.")]
    public string? Guide { get; init; }

    [CommandOption("--region <REGION>")]
    [Description("Country and state by ISO 3166-2, for example US-DE. It helps to choose the published guide.")]
    public string? Region { get; init; }

    /// <summary>The options that the service takes in the query.</summary>
    internal string Query => $"?units={Units}{(Working ? "&working=true" : "")}{(Strict ? "&strict=true" : "")}{(HideAnswers ? "&answers=hidden" : "")}";

    /// <inheritdoc />
    public override ValidationResult Validate() => Units is "us" or "metric"
        ? base.Validate()
        : ValidationResult.Error($"The units \"{Units}\" are not known. Use us or metric.");
}
