using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb show takes.</summary>
internal sealed class ShowSettings : ServiceSettings
{
    /// <summary>The catalogues of the service.</summary>
    internal static readonly IReadOnlyList<string> Catalogues = ["guides", "crops", "materials", "cover-crops", "lime-methods", "method-conversions", "rules", "sources", "formulas", "mistakes", "limits"];

    [CommandArgument(0, "<CATALOGUE>")]
    [Description("guides, crops, materials, cover-crops, lime-methods, method-conversions, rules, sources, formulas, mistakes or limits.")]
    public string Catalogue { get; init; } = "";

    [CommandArgument(1, "[ID]")]
    [Description("One entry, whole.")]
    public string? Id { get; init; }

    /// <inheritdoc />
    public override ValidationResult Validate() => Catalogues.Contains(Catalogue)
        ? base.Validate()
        : ValidationResult.Error($"There is no catalogue \"{Catalogue}\". Use {string.Join(", ", Catalogues)}.");
}
