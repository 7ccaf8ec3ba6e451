using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb sample takes.</summary>
internal sealed class SampleSettings : ServiceSettings
{
    [CommandOption("--analyte <ANALYTE>")]
    [Description("Of what, for example P. Its published field variation is used; with two reports only it is compared.")]
    public string? Analyte { get; init; }

    [CommandOption("--extractant <EXTRACTANT>")]
    [Description("By which extractant, for example mehlich-3.")]
    public string? Extractant { get; init; }

    [CommandOption("--cv <PERCENT>")]
    [Description("How much your own block varies from core to core: coefficient of variation, in percent.")]
    public string? Cv { get; init; }

    [CommandOption("--precision <PERCENT>")]
    [Description("How near the sample shall come, plus or minus percent: asks for the number of cores.")]
    public string? Precision { get; init; }

    [CommandOption("--cores <NUMBER>")]
    [Description("Cores that you mix: asks how near they come.")]
    public string? Cores { get; init; }

    [CommandOption("--confidence <PERCENT>")]
    [Description("In how many of a hundred cases it shall hold, for example 80, 90 or 95. Without it, 95.")]
    public string? Confidence { get; init; }

    [CommandOption("--before <LABFILE>")]
    [Description("Earlier lab file. With --after: which results have really changed, sample by sample of the same id.")]
    public string? Before { get; init; }

    [CommandOption("--after <LABFILE>")]
    [Description("Later lab file of the same samples.")]
    public string? After { get; init; }

    [CommandOption("--working")]
    [Description("Show the arithmetic step by step, with enough digits to follow it with a pocket calculator.")]
    public bool Working { get; init; }

    /// <summary>The options that the service takes in the query.</summary>
    internal string Query => Working ? "?working=true" : "";

    /// <summary>Whether cores are asked about.</summary>
    internal bool AsksForCores => Precision is not null || Cores is not null;

    /// <inheritdoc />
    public override ValidationResult Validate()
    {
        if (Before is null != After is null)
        {
            return ValidationResult.Error("Two lab files are compared. Give both --before and --after.");
        }

        return AsksForCores || Before is not null
            ? base.Validate()
            : ValidationResult.Error("Nothing is asked for. Give --precision or --cores, or the two lab files --before and --after.");
    }
}
