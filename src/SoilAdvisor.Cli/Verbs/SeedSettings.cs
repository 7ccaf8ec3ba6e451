using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb seed takes.</summary>
internal sealed class SeedSettings : CalculationSettings
{
    [CommandArgument(0, "<SPECIES>")]
    [Description("One to four cover crops by id, each with its share of the full rate if you like: oats=50 field-pea=50.")]
    public string[] Species { get; init; } = [];

    [CommandOption("--area <SQUAREFEET>")]
    [Description("Ground to sow, in square feet, to see the seed for it in ounces and grams.")]
    public string? Area { get; init; }

    [CommandOption("--sow <WAY>")]
    [Description("drilled, broadcast (thrown and worked in) or surface. Without it, broadcast.")]
    public string? Sow { get; init; }

    [CommandOption("--tag <TAG>")]
    [Description("Seed tag of one species: purity, germination and, if it counts, hard seed in percent, for example oats=98/90 or hairy-vetch=98/80/10.")]
    public string[] Tags { get; init; } = [];
}
