using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Options of every verb that asks the service.</summary>
internal class ServiceSettings : CommandSettings
{
    [CommandOption("--format <FORMAT>")]
    [Description("table (default) or json. plan also offers markdown, html and csv; season offers ics.")]
    public string? Format { get; init; }

    [CommandOption("-o|--output <FILE>")]
    [Description("Write the result to this file instead of the screen. The ending of its name chooses the format unless --format does.")]
    public string? Output { get; init; }

    [CommandOption("--force")]
    [Description("Replace the output file if it is already there. Without it the file is left alone.")]
    public bool Force { get; init; }

    [CommandOption("--server <ADDRESS>")]
    [Description("Ask the service at this address, for example http://soil.example:8080. Without it the command starts its own.")]
    public string? Server { get; init; }

    /// <summary>Formats that this verb offers.</summary>
    internal virtual IReadOnlyList<string> Formats => ["table", "json"];

    /// <summary>The format asked for, or the one that the output file's name says.</summary>
    internal string ChosenFormat => Format ?? Path.GetExtension(Output ?? "").ToLowerInvariant() switch
    {
        ".json" => "json",
        ".md" => "markdown",
        ".html" or ".htm" => "html",
        ".csv" => "csv",
        ".ics" => "ics",
        _ => "table",
    };

    /// <summary>The format as the service knows it; the screen draws from JSON.</summary>
    internal string MediaType => ChosenFormat switch
    {
        "markdown" => "text/markdown",
        "html" => "text/html",
        "csv" => "text/csv",
        _ => "application/json",
    };

    /// <summary>Address of the named service; null when none is named.</summary>
    internal Uri? ServerAddress => Server is null ? null : new Uri(Server.EndsWith('/') ? Server : Server + "/");

    /// <inheritdoc />
    public override ValidationResult Validate()
    {
        if (!Formats.Contains(ChosenFormat))
        {
            return ValidationResult.Error($"The format \"{ChosenFormat}\" is not offered here. Use {string.Join(", ", Formats)}.");
        }

        return Server is null || (Uri.TryCreate(Server, UriKind.Absolute, out var address) && address.Scheme is ("http" or "https"))
            ? ValidationResult.Success()
            : ValidationResult.Error($"\"{Server}\" is not an address. Write for example --server http://127.0.0.1:8080");
    }
}
